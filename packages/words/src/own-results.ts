// What a group worked out itself, beside what the program worked out with the pi of the class.

import type { ClassPi, OwnLine } from '@cairnmark/engine';
import { amount, capital, counted, errorText, fullAmount, measureName } from './amounts.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

/** "Volume: you found 502 cm³. Check your working. It comes out with ...". The value that is right is not told. */
export function ownSentence({ measure, own, verdict, slip, points }: OwnLine, pi: ClassPi, voice: Voice): string {
  const { words } = voice;
  let sentence = fill(words.own[`verdict.${verdict}`], {
    measure: capital(measureName(measure, voice)),
    value: fullAmount(measure, own, null, voice),
  });
  if (slip !== null) {
    const hint = fill(words.own[`slip.${slip}`], { pi: words.names.pi[pi] });
    sentence = fill(words.own.hint, { sentence, slip: hint });
  }
  return points === 0 ? sentence : fill(words.own.earns, { sentence, points: counted('points', points, words) });
}

/** "Volume, worked out with π as 3.14: 497 cm³ ± 7 cm³.", "Height, measured: 347 mm ± 3 mm."; null: there is none. */
export function expectedSentence(line: OwnLine, pi: ClassPi, voice: Voice): string | null {
  const { expected, source, tolerance } = line;
  if (expected === null || source === null) return null;
  const { words } = voice;
  const measure = capital(measureName(line.measure, voice));
  const value = `${amount(line.measure, expected, tolerance, voice)} ${errorText(line.measure, tolerance, voice)}`;
  if (source !== 'predicted') {
    return fill(words.own['held-against'], { measure, source: words.names.sources[source], value: value.trimEnd() });
  }
  return fill(words.own.expected, { measure, pi: words.names.pi[pi], value: value.trimEnd() });
}
