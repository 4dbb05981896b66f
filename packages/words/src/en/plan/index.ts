// The texts of the screens on which a class is planned and run, in English.

import { challenge } from './challenge.ts';
import { classPlan } from './class.ts';
import { kit } from './kit.ts';
import { models } from './models.ts';
import { printing } from './printing.ts';
import { recordSheet } from './record-sheet.ts';
import { share } from './share.ts';
import { supplyGame } from './supply-game.ts';

export const plan = {
  ...classPlan,
  ...challenge,
  ...kit,
  ...supplyGame,
  ...recordSheet,
  ...printing,
  ...share,
  ...models,
};
