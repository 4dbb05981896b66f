// The steps of the three lessons, and what happens in them in this class: who cuts, which solids are hard, what is foretold.

import type { KindOfPiece } from '@cairnmark/engine';
import { askedFor } from './asked-for.ts';
import type { SheetContext } from './context.ts';

/** Minutes, of a lesson of 45 (common practice, no source). */
export const MAKE = [
  [10, 'print.plan-make-start'],
  [10, 'print.plan-make-measure'],
  [20, 'print.plan-make-fold'],
  [5, 'print.plan-make-end'],
] as const;
export const EARN = [
  [10, 'print.plan-earn-start'],
  [15, 'print.plan-earn-play'],
  [10, 'print.plan-earn-check'],
  [10, 'print.plan-earn-end'],
] as const;
/** In place of a game. */
export const SHARE = [
  [5, 'print.plan-share-start'],
  [20, 'print.plan-share-try'],
  [10, 'print.plan-share-check'],
  [10, 'print.plan-earn-end'],
] as const;
export const BUILD = [
  [15, 'print.plan-build-start'],
  [10, 'print.plan-build-measure'],
  [10, 'print.plan-build-again'],
  [10, 'print.plan-build-end'],
] as const;

export type Steps = typeof MAKE | typeof EARN | typeof SHARE | typeof BUILD;

/** A step in words. */
export function stepText(key: Steps[number][1], context: SheetContext): string {
  switch (key) {
    case 'print.plan-make-fold':
      return foldText(context);
    case 'print.plan-earn-end':
      return context.say(isHeightAsked(context) ? key : 'print.plan-earn-draw');
    default:
      return context.say(key);
  }
}

/** Young pupils are cut for; hard nets are for an adult or a second lesson. */
function foldText(context: SheetContext): string {
  const { challenge, say, words } = context;
  const isYoung = challenge.gradePreset === 'grades-2-3';
  const fold = say(isYoung ? 'print.plan-make-fold-young' : 'print.plan-make-fold');
  const hard = challenge.kit.kinds.filter((kind) => isHard(kind, context)).map(({ name }) => name);
  return hard.length === 0 ? fold : `${fold} ${say('print.plan-make-hard', { kinds: words.words.listed(hard) })}`;
}

/** Round walls do not fold, and nets of twelve or twenty faces take long (common practice, no source). */
function isHard({ id, material }: KindOfPiece, { solids }: SheetContext): boolean {
  const counts = solids.get(id)?.counts;
  if (material.kind !== 'folded-paper' || counts === undefined) return false;
  return counts.curvedSurfaces > 0 || counts.flatFaces >= MANY_FACES;
}

const MANY_FACES = 12;

const isHeightAsked = ({ challenge }: SheetContext): boolean => {
  const asked = askedFor(challenge);
  return asked.has('height') || asked.has('height-to-width');
};
