// English sentences about what a group worked out itself: does it agree, and if not, which step seems to differ.

import type { OwnKey } from '../keys.ts';

export const own = {
  'verdict.agrees': '{measure}: you found {value}. That agrees.',
  'verdict.close': '{measure}: you found {value}. That is close.',
  'verdict.check-the-working': '{measure}: you found {value}. Check your working.',
  'verdict.not-measured': '{measure}: you found {value}. There is nothing to compare it with.',
  hint: '{sentence} {slip}',
  earns: '{sentence} It earns {points}.',
  expected: '{measure}, worked out with {pi}: {value}.',
  'held-against': '{measure}, {source}: {value}.',
  'slip.diameter-for-radius':
    'It comes out with the diameter in place of the radius: look at the step with the radius.',
  'slip.radius-for-diameter':
    'It comes out with the radius in place of the diameter: look at the step with the diameter.',
  'slip.cm-for-mm': 'It comes out with mm taken for cm, or cm for mm: look at the units.',
  'slip.third-forgotten': 'It comes out without dividing by 3: look at the pyramids and cones.',
  'slip.slant-for-height':
    'It comes out with the slant height in place of the height: look at the step with the height.',
  'slip.other-pi': 'It comes out with another number for π. Your class takes {pi}.',
  'slip.piece-forgotten': 'It comes out with one piece left out: count the pieces again.',
  'slip.contact-counted-once':
    'It comes out with one side of a contact left in: where two pieces touch, both sides are hidden.',
  'slip.added-for-subtracted': 'It comes out with plus in place of minus: look at what must be taken away.',
} as const satisfies Readonly<Record<OwnKey, string>> & Readonly<Record<string, string>>;
