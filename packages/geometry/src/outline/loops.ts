// Loops of strands: the ways round the counted region, outer ones counter-clockwise, holes clockwise; mm.

import { areaUnder, lengthBetween } from './edge.ts';
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

/** All loops of strands that have been joined. An open one is closed by a straight line that adds no length. */
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

function loopOf(strands: readonly Strand[], touchingMm: number): Loop {
  let areaMm2 = 0;
  let lengthMm = 0;
  let wayMm = 0;
  let before = strands.at(-1);
  for (const strand of strands) {
    areaMm2 += areaUnder(strand.edge, strand.from, strand.to);
    if (before !== undefined) areaMm2 += (before.endX * strand.startY - before.endY * strand.startX) / 2;
    const strandMm = lengthBetween(strand.edge, strand.from, strand.to);
    wayMm += strandMm;
    if (strand.acrossMm === 0 || strand.acrossMm > touchingMm) lengthMm += strandMm;
    before = strand;
  }
  return { strands, signedAreaMm2: areaMm2, lengthMm, wayMm };
}
