// Texts and ids. A word that was met before in its vocabulary is told by its place there. Otherwise letter by letter: five
// bits for what ids and sentences are mostly made of, eleven for digits and capitals, 26 for any other sign.

import type { BitsIn, BitsOut } from './bits.ts';
import type { Part } from './part.ts';
import { count } from './part.ts';

/** `vocabulary`: texts of one sort, of which the same come again. */
export const word = (vocabulary: string): Part<string> => ({
  write: (text, out) => {
    const met = metIn(vocabulary, out);
    const at = met.indexOf(text);
    if (met.length > 0) out.put(at < 0 ? 0 : 1, 1);
    if (at >= 0) return out.put(at, bitsFor(met.length));
    met.push(text);
    letters.write(text, out);
  },
  read: (from) => {
    const met = metIn(vocabulary, from);
    if (met.length > 0 && from.take(1) === 1) {
      const text = met[from.take(bitsFor(met.length))];
      if (text === undefined) from.fault();
      return text ?? '';
    }
    const text = letters.read(from);
    met.push(text);
    return text;
  },
});

function metIn(vocabulary: string, { words }: Pick<BitsOut, 'words'>): string[] {
  const met = words.get(vocabulary) ?? [];
  words.set(vocabulary, met);
  return met;
}

/** Bits that tell `choices` things apart. */
const bitsFor = (choices: number): number => Math.ceil(Math.log2(choices));

/** A text that hardly comes twice. */
export const letters: Part<string> = {
  write: (text, out) => {
    const signs = [...text];
    count.write(signs.length, out);
    for (const sign of signs) writeSign(sign, out);
  },
  read: (from) => {
    const length = count.read(from);
    if (length > from.left()) {
      from.fault();
      return '';
    }
    let text = '';
    for (let k = 0; k < length; k += 1) text += readSign(from);
    return text;
  },
};

function writeSign(sign: string, out: BitsOut): void {
  const [often, seldom] = [OFTEN.indexOf(sign), SELDOM.indexOf(sign)];
  if (often >= 0) {
    out.put(often, OFTEN_BITS);
  } else if (seldom >= 0) {
    out.put(SELDOM_FOLLOWS, OFTEN_BITS);
    out.put(seldom, SELDOM_BITS);
  } else {
    out.put(POINT_FOLLOWS, OFTEN_BITS);
    out.put(sign.codePointAt(0) ?? 0, POINT_BITS);
  }
}

function readSign(from: BitsIn): string {
  const often = from.take(OFTEN_BITS);
  if (often === SELDOM_FOLLOWS) return SELDOM.charAt(from.take(SELDOM_BITS));
  if (often !== POINT_FOLLOWS) return OFTEN.charAt(often);
  const point = from.take(POINT_BITS);
  if (point <= LAST_POINT) return String.fromCodePoint(point);
  from.fault();
  return '';
}

const OFTEN_BITS = 5;
const OFTEN = 'abcdefghijklmnopqrstuvwxyz -.,';
/** Two places are left: what they say stands in the bits behind. */
const SELDOM_FOLLOWS = 30;
const POINT_FOLLOWS = 31;
const SELDOM_BITS = 6;
const SELDOM = `0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ:;!?'"()/+*%=&_#@<>áéíóúñü¿¡`;
/** The signs of Unicode. */
const POINT_BITS = 21;
const LAST_POINT = 0x10ffff;
