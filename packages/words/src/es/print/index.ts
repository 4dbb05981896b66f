// The texts of the sheets that are printed, in Spanish.

import type { PrintCatalogue } from '../../print.ts';
import { frame } from './frame.ts';
import { ground } from './ground.ts';
import { printIssues } from './issues.ts';

export const printed: PrintCatalogue = { decimalMark: ',', texts: { ...frame, ...ground }, issues: printIssues };
