// Does it stand? The verdict in one sentence, the figures behind it, and what the sums leave out.

import type { Stability } from '@cairnmark/geometry';
import type { Kinds } from './pieces.ts';
import { pieceNames } from './pieces.ts';
import { exact } from './quantities.ts';
import { fill } from './say.ts';
import { sayingOf } from './saying.ts';
import { figureLines, reasonLines } from './stability-lines.ts';
import type { Voice } from './voice.ts';

export interface StabilityWords {
  readonly verdict: string;
  readonly lines: readonly string[];
  /** What the sums leave out: shown wherever the verdict is shown. */
  readonly limits: readonly string[];
}

export function stabilityWords(stability: Stability, kinds: Kinds, voice: Voice): StabilityWords {
  return {
    verdict: verdictSentence(stability, kinds, voice),
    lines: (stability.verdict === 'not-predicted' ? reasonLines : figureLines)(stability, kinds, voice),
    limits: limitSentences(voice),
  };
}

function verdictSentence(stability: Stability, kinds: Kinds, voice: Voice): string {
  const { words, reader } = voice;
  return fill(words.stability[`verdict.${sayingOf(stability)}`], {
    pieces: pieceNames(stability.rolling, kinds, voice),
    // A build is nearly held when a move by one division of the ruler holds it.
    step: exact(reader.ruler.stepMm, 'mm', reader.ruler, words.decimalMark),
    ...bounds(voice),
  });
}

function limitSentences(voice: Voice): readonly string[] {
  const { stability, cautions } = voice.words;
  return [
    stability['limit.stiff'],
    stability['limit.kindly'],
    fill(stability['limit.close'], bounds(voice)),
    stability['limit.grip'],
    stability['limit.test'],
    cautions['stands-or-falls'],
  ];
}

/** The tilts that part the words of the verdict. */
function bounds({ words, reader }: Voice): Readonly<Record<'close' | 'steady', string>> {
  const degrees = (tiltRad: number): string => exact(tiltRad, 'rad', reader.ruler, words.decimalMark);
  return { close: degrees(reader.bands.closeRad), steady: degrees(reader.bands.steadyRad) };
}
