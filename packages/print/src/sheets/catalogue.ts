// Every sheet for a lesson, in the order of the day: a new one is a file beside this and a line here.

import { answerKey } from './answer-key.ts';
import { game } from './game.ts';
import { lessonPlan } from './lesson-plan.ts';
import { materialsWith } from './materials.ts';
import { measureOwn } from './measure-own.ts';
import { measureOlder, measureYoung } from './measuring.ts';
import { record } from './record.ts';
import { recordPieces } from './record-pieces.ts';
import { reflection } from './reflection.ts';
import { results } from './results.ts';
import { riddle, riddleKey } from './riddle-sheets.ts';
import { roles } from './roles.ts';
import { rubric } from './rubric.ts';
import { rules } from './rules.ts';
import type { SheetId, SheetKind } from './sheet-kind.ts';
import { tableCards } from './table-cards.ts';

export const SHEETS: Readonly<Record<SheetId, SheetKind>> = {
  'lesson-plan': lessonPlan,
  materials: materialsWith(() => Object.values(SHEETS)),
  'measure-young': measureYoung,
  'measure-older': measureOlder,
  'measure-own': measureOwn,
  'answer-key': answerKey,
  rules,
  roles,
  game,
  record,
  'record-pieces': recordPieces,
  rubric,
  results,
  riddle,
  'riddle-key': riddleKey,
  reflection,
  'table-cards': tableCards,
};
