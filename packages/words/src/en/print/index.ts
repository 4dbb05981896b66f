// The texts of the sheets that are printed, in English.

import { frame } from './frame.ts';
import { printIssues } from './issues.ts';

export const printed = { decimalMark: '.', texts: { ...frame }, issues: printIssues } as const;
