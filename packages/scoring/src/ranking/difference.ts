// The error of the difference of two readings, whose errors may come from the same sources: the size of a piece that was
// read once for the whole class is off by the same in every build, and cancels where two builds hold it alike. The parts
// of one source are subtracted, those of different sources add in quadrature, and so does what is each reading's own:
// E2 = sum of (a - b)2 + own2 + own2, with own2 = tolerance2 - sum of parts2 (JCGM 100:2008, 5.2.2; from memory).
// All in whole millionths of the unit of the readings, squared where the name says so.

import type { Millionths } from '../rounding/fixed.ts';
import { toMillionths } from '../rounding/fixed.ts';

/** The error of one reading. */
export interface ReadingError {
  /** Of all parts together, its own included. */
  readonly wholeSq: bigint;
  /** Signed, by source. */
  readonly parts: ReadonlyMap<string, Millionths>;
  /** What fixing the tolerance and the parts to a millionth, each off by up to a half, may make of a rest that is 0. */
  readonly noiseSq: bigint;
}

const NO_PARTS: ReadonlyMap<string, Millionths> = new Map();

/** `tolerance` and `errors` as a fact has them. */
export function readingError(tolerance: number, errors: Readonly<Record<string, number>>): ReadingError {
  const fixed = toMillionths(tolerance);
  const toleranceSq = fixed * fixed;
  const sources = Object.entries(errors);
  if (sources.length === 0) return { wholeSq: toleranceSq, parts: NO_PARTS, noiseSq: 0n };
  const parts = new Map(sources.map(([source, error]) => [source, toMillionths(error)]));
  let [partsSq, noiseSq] = [0n, fixed + 1n];
  for (const part of parts.values()) {
    partsSq += part * part;
    noiseSq += (part < 0n ? -part : part) + 1n;
  }
  return { wholeSq: toleranceSq > partsSq ? toleranceSq : partsSq, parts, noiseSq };
}

/** The square of E; 0 when all of it cancels. */
export function differenceErrorSq(a: ReadingError, b: ReadingError): bigint {
  if (a.parts.size === 0 || b.parts.size === 0) return a.wholeSq + b.wholeSq;
  const sq = a.wholeSq + b.wholeSq - 2n * inCommon(a, b);
  return sq > a.noiseSq + b.noiseSq ? sq : 0n;
}

/** A whole number that is not below the root, and hardly above it. */
export const rootAbove = (square: bigint): Millionths => BigInt(Math.ceil(Math.sqrt(Number(square)))) + 1n;

/** The sum of a b over the sources of both. */
function inCommon({ parts }: ReadingError, other: ReadingError): bigint {
  let sum = 0n;
  for (const [source, part] of parts) sum += part * (other.parts.get(source) ?? 0n);
  return sum;
}
