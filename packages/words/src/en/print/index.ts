// The texts of the sheets that are printed, in English.

import { tableCards } from './cards.ts';
import { frame } from './frame.ts';
import { ground } from './ground.ts';
import { printIssues } from './issues.ts';
import { lesson } from './lesson.ts';
import { materials } from './materials.ts';
import { measuring } from './measuring.ts';
import { nets } from './nets.ts';
import { records } from './records.ts';
import { riddles } from './riddles.ts';
import { rules } from './rules.ts';
import { sheets } from './sheets.ts';

export const printed = {
  decimalMark: '.',
  texts: {
    ...frame,
    ...ground,
    ...sheets,
    ...measuring,
    ...rules,
    ...riddles,
    ...records,
    ...lesson,
    ...materials,
    ...nets,
    ...tableCards,
  },
  issues: printIssues,
} as const;
