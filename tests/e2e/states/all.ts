// All states, screen by screen. A new screen is a file beside this one and a line here.

import { board } from './board.ts';
import { build } from './build.ts';
import { challenge } from './challenge.ts';
import { classPlan } from './class.ts';
import { fair } from './fair.ts';
import { frame } from './frame.ts';
import { kit } from './kit.ts';
import { print } from './print.ts';
import { record } from './record.ts';
import { scoreCard } from './score-card.ts';
import { share } from './share.ts';
import { start } from './start.ts';
import type { State } from './state.ts';
import { supply } from './supply.ts';
import { trace } from './trace.ts';

export const STATES: readonly State[] = [
  ...start,
  ...frame,
  ...build,
  ...scoreCard,
  ...board,
  ...fair,
  ...classPlan,
  ...challenge,
  ...kit,
  ...print,
  ...supply,
  ...record,
  ...share,
  ...trace,
];
