// The texts of the sheets that are printed, in English.

import { frame } from './frame.ts';
import { ground } from './ground.ts';
import { printIssues } from './issues.ts';

export const printed = { decimalMark: '.', texts: { ...frame, ...ground }, issues: printIssues } as const;
