// Numbers, each to its last digit in the shortest of four ways: the one before it in its column, a short decimal, the turn
// of a whole number of degrees, or the 64 bits that computers keep a number in.

import type { BitsIn, BitsOut } from './bits.ts';
import type { Part } from './part.ts';

/** `column`: numbers of one sort, which often come again one after another. A column starts from 0. */
export const number = (column: string): Part<number> => ({
  write: (value, out) => {
    // Files know no minus before a zero either.
    const plain = value + 0;
    if (plain === (out.numbers.get(column) ?? 0)) return out.put(0, 1);
    out.numbers.set(column, plain);
    out.put(1, 1);
    writeNew(plain, out);
  },
  read: (from) => {
    if (from.take(1) === 0) return from.numbers.get(column) ?? 0;
    const value = readNew(from);
    from.numbers.set(column, value);
    return value;
  },
});

function writeNew(value: number, out: BitsOut): void {
  const decimal = decimalOf(value);
  const degrees = Math.round((value * 180) / Math.PI);
  if (decimal !== null) writeDecimal(decimal, out);
  else if (turnOf(degrees) === value && degrees >= 0 && degrees < 2 ** DEGREES_BITS) {
    out.put(0b10, 2);
    out.put(degrees, DEGREES_BITS);
  } else {
    out.put(0b11, 2);
    writeWhole(value, out);
  }
}

function readNew(from: BitsIn): number {
  if (from.take(1) === 0) return readDecimal(from);
  return from.take(1) === 0 ? turnOf(from.take(DEGREES_BITS)) : readWhole(from);
}

/** Once round, and room to spare. The editor makes turns in this very way, so they come back to the last bit. */
const DEGREES_BITS = 9;
const turnOf = (degrees: number): number => (degrees * Math.PI) / 180;

/** `digits`, with its sign, and the point before the last `places` of them. */
interface Decimal {
  readonly digits: number;
  readonly places: number;
}

/** null: longer than a decimal is written here. */
function decimalOf(value: number): Decimal | null {
  for (let places = 0; places <= PLACES_MOST; places += 1) {
    const digits = Math.round(value * 10 ** places);
    // One more than the digits is written, in fewer than LENGTH_MOST bits behind its first.
    if (Math.abs(digits) + 1 < 2 ** LENGTH_MOST && valueOf({ digits, places }) === value) return { digits, places };
  }
  return null;
}

const valueOf = ({ digits, places }: Decimal): number => digits / 10 ** places;

/** A hundredth of a mm is what the editor keeps; files made elsewhere have turns of six places. */
const PLACES_BITS = 3;
const PLACES_MOST = 2 ** PLACES_BITS;
/** Bits of the digits: below this, the 64 bits are no longer. */
const LENGTH_BITS = 5;
const LENGTH_MOST = 2 ** LENGTH_BITS;

/** A bit for a point and its place, the sign, how many bits the digits have, and these without the first, which is 1. */
function writeDecimal({ digits, places }: Decimal, out: BitsOut): void {
  out.put(0, 1);
  out.put(places === 0 ? 0 : 1, 1);
  if (places > 0) out.put(places - 1, PLACES_BITS);
  out.put(digits < 0 ? 1 : 0, 1);
  const shifted = Math.abs(digits) + 1;
  const length = Math.floor(Math.log2(shifted));
  out.put(length, LENGTH_BITS);
  out.put(shifted - 2 ** length, length);
}

function readDecimal(from: BitsIn): number {
  const places = from.take(1) === 0 ? 0 : from.take(PLACES_BITS) + 1;
  const isMinus = from.take(1) === 1;
  const length = from.take(LENGTH_BITS);
  const digits = from.take(length) + 2 ** length - 1;
  return valueOf({ digits: isMinus ? -digits : digits, places }) + 0;
}

function writeWhole(value: number, out: BitsOut): void {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  out.put(view.getUint32(0), 32);
  out.put(view.getUint32(4), 32);
}

function readWhole(from: BitsIn): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setUint32(0, from.take(32));
  view.setUint32(4, from.take(32));
  return view.getFloat64(0);
}
