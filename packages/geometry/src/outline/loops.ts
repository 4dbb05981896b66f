// Loops of strands: the ways round the counted region, outer ones counter-clockwise, holes clockwise; mm.

import { xAt, yAt } from './edge.ts';
import type { Strand } from './strands.ts';

export interface Loop {
  readonly strands: readonly Strand[];
  /** Positive for an outer loop, negative for a hole, by its size; mm2. */
  readonly signedAreaMm2: number;
  /** The way round, a mouth or link counted with its width where that is more than a contact. */
  readonly lengthMm: number;
  /** The way round with every mouth and link. */
  readonly wayMm: number;
}

/**
 * All loops of strands that have been joined; one that stays open is closed by a straight line that adds no length.
 * Mouths and links up to `touchingMm` wide add none either.
 */
export function loopsOf(strands: readonly Strand[], touchingMm: number): readonly Loop[] {
  const seen = new Set<Strand>();
  const loops: Loop[] = [];
  // Open ways first, from their starts, so that each is walked whole.
  for (const strand of [...strands.filter((one) => !one.follows), ...strands]) {
    if (seen.has(strand)) continue;
    const round: Strand[] = [];
    for (let at: Strand | undefined = strand; at !== undefined && !seen.has(at); at = at.next) {
      seen.add(at);
      round.push(at);
    }
    loops.push(loopOf(round, touchingMm));
  }
  return loops;
}

/**
 * The width of a hole: four areas by the way round. Of a disc it is the diameter, of a square the side, of a long wedge the
 * height at its wide end.
 */
export const widthOf = (loop: Loop): number => (-4 * loop.signedAreaMm2) / loop.wayMm;

function loopOf(strands: readonly Strand[], touchingMm: number): Loop {
  let signedAreaMm2 = 0;
  let lengthMm = 0;
  let wayMm = 0;
  let before = strands.at(-1);
  for (const strand of strands) {
    signedAreaMm2 += strand.areaMm2 + (before === undefined ? 0 : areaBetween(before, strand));
    wayMm += strand.lengthMm;
    if (strand.acrossMm === 0 || strand.acrossMm > touchingMm) lengthMm += strand.lengthMm;
    before = strand;
  }
  return { strands, signedAreaMm2, lengthMm, wayMm };
}

/** The share in the area of the straight way from the end of one strand to the start of the next: rounding, as a rule. */
function areaBetween(before: Strand, next: Strand): number {
  const [endX, endY] = [xAt(before.last, before.to), yAt(before.last, before.to)];
  return (endX * yAt(next.first, next.from) - endY * xAt(next.first, next.from)) / 2;
}
