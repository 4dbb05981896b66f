// What goes first: which pieces move as one, over which edge or point of what, and how far past or inside it the centre
// of their weight is.

import type { Failure, Hinge } from '@cairnmark/geometry';
import type { Kinds } from './pieces.ts';
import { pieceName, pieceNames } from './pieces.ts';
import { exact, reading } from './quantities.ts';
import { fill } from './say.ts';
import { sideText } from './tilts.ts';
import type { Voice } from './voice.ts';

/** `when`: it falls as it is, or it stands and this would go first just past what it bears. One sentence a failure. */
export function failureSentences(
  failures: readonly Failure[],
  when: 'falls' | 'stands',
  kinds: Kinds,
  voice: Voice,
): readonly string[] {
  return failures.map((failure, k) =>
    fill(voice.words.stability[`${k === 0 ? 'first' : 'also'}.${when}`], { what: failureText(failure, kinds, voice) }),
  );
}

/** "4 mm past the edge", "less than 1 mm short of that point". `pastMm` is negative inside. */
export function whereText(at: 'edge' | 'point', pastMm: number, voice: Voice): string {
  const side = pastMm > 0 ? 'past' : 'inside';
  return fill(voice.words.stability[`${at}.${side}`], { length: shortLength(Math.abs(pastMm), voice) });
}

function failureText({ pieces, on, hinge }: Failure, kinds: Kinds, voice: Voice): string {
  const { stability } = voice.words;
  const whole = pieces.length > 1 && pieces.length === kinds.length;
  const names = whole ? stability.all : pieceNames(pieces, kinds, voice);
  if (on === null) return fill(stability['goes.dropping'], { pieces: names });
  const onName = pieceName(on, kinds, voice);
  if (hinge === null) return fill(stability['goes.slipping'], { pieces: names, on: onName });
  const at = edgeOrPoint(hinge);
  return fill(stability[`goes.over-${at}`], {
    pieces: names,
    side: sideText(hinge.towards, voice),
    on: onName,
    where: whereText(at, hinge.pastMm, voice),
  });
}

/** mm. A shorter edge is a point to the eye. */
const POINT_MM = 0.05;

export const edgeOrPoint = ({ ends: [from, to] }: Hinge): 'edge' | 'point' =>
  Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]) < POINT_MM ? 'point' : 'edge';

/** As the ruler reads it; never 0: what is less than a division is said to be less. */
export function shortLength(lengthMm: number, { words, reader: { ruler } }: Voice): string {
  if (lengthMm >= ruler.stepMm) return reading(lengthMm, 'mm', 0, ruler, words.decimalMark);
  return fill(words.stability.less, { amount: exact(ruler.stepMm, 'mm', ruler, words.decimalMark) });
}
