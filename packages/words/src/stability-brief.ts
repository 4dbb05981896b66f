// The verdict in one or two short sentences, for the strip under a build: what a group needs while it builds.

import type { Failure, Mend, Stability, Tilt } from '@cairnmark/geometry';
import { capital, listed } from './amounts.ts';
import { edgeOrPoint, shortLength } from './failures.ts';
import type { Kinds } from './pieces.ts';
import { pieceNames } from './pieces.ts';
import { exact } from './quantities.ts';
import { fill } from './say.ts';
import { limitOf } from './stability-lines.ts';
import { degreesText } from './tilts.ts';
import type { Voice } from './voice.ts';

export interface StabilityBrief {
  /** "Falls". */
  readonly title: string;
  readonly sentence: string;
  /** The move that holds it, when there is one: hints can be switched off. */
  readonly mend: string | null;
}

export function stabilityBrief(stability: Stability, kinds: Kinds, voice: Voice): StabilityBrief {
  return {
    title: capital(voice.words.names.stands[stability.verdict]),
    sentence: sentenceOf(stability, kinds, voice),
    mend: stability.mend === null ? null : moveSentence(stability.mend, voice),
  };
}

function sentenceOf(stability: Stability, kinds: Kinds, voice: Voice): string {
  const texts = voice.words.stability;
  const { verdict, stands, standsTo, tipsAt, slidesAt, first, rolling } = stability;
  if (verdict === 'not-predicted') return texts['brief.not-predicted'];
  if (verdict === 'rolls-at-a-touch') return fill(texts['brief.rolls'], { pieces: pieceNames(rolling, kinds, voice) });
  if (stands === false) return first.map((failure) => failureSentence(failure, kinds.length, voice)).join(' ');
  if (standsTo === null) return texts[`verdict.${stands === true ? 'margin-not-decided' : 'not-decided'}`];
  const bears = bearsSentence(standsTo, limitOf(standsTo, tipsAt, slidesAt), voice);
  return verdict === 'too-close-to-call' ? fill(texts['brief.close'], { bears }) : bears;
}

function bearsSentence({ tiltRad }: Tilt, limit: 'tips' | 'slides' | 'wedged', voice: Voice): string {
  return fill(voice.words.stability[`brief.${limit}`], { degrees: degreesText(tiltRad, voice) });
}

function failureSentence({ pieces, on, hinge }: Failure, count: number, voice: Voice): string {
  const texts = voice.words.stability;
  const what = capital(piecesText(pieces, count, voice));
  const number = pieces.length === 1 || pieces.length === count ? 'one' : 'many';
  if (on === null) return fill(texts[`brief.${number}-drops`], { what });
  if (hinge === null) return fill(texts[`brief.${number}-slips`], { what });
  const goes = fill(texts[`brief.${number}-over`], { what });
  // Round pieces can go over with the balance point still inside: then nothing is said to be past.
  if (hinge.pastMm <= 0) return fill(texts['brief.over'], { goes });
  return fill(texts[`brief.past-${edgeOrPoint(hinge)}`], { goes, length: shortLength(hinge.pastMm, voice) });
}

/** "piece 5", "pieces 3, 4 and 5", "the whole build". */
function piecesText(pieces: readonly number[], count: number, { words }: Voice): string {
  const numbers = pieces.map((piece) => String(piece + 1));
  if (pieces.length > 1 && pieces.length === count) return words.stability.all;
  return fill(words.stability[pieces.length === 1 ? 'brief.piece' : 'brief.pieces'], {
    numbers: listed(numbers, words.and),
  });
}

function moveSentence({ moved, side, byMm }: Mend, { words, reader }: Voice): string {
  const length = exact(byMm, 'mm', reader.ruler, words.decimalMark);
  return fill(words.stability['brief.move'], {
    what: piecesText(moved, Number.POSITIVE_INFINITY, { words, reader }),
    by: fill(words.results[`gap.${side}`], { length }),
  });
}
