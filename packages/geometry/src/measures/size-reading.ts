// One size of one kind as a reading, in a build that is laid out: when the size is nudged, every piece of the kind takes
// the new size and the pieces that touch it side by side stay in touch. mm; angles rad.

import type { Outline } from '../kernel/outline.ts';
import { NUDGE_MM } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { dot2, length2 } from '../kernel/vec.ts';
import { makeSolid } from '../solids/catalogue.ts';
import type { Solid } from '../solids/types.ts';
import type { LaidPiece, Layout, Stack } from '../stack/types.ts';
import type { PieceKinds } from './build.ts';
import type { Link } from './in-touch.ts';
import { driftOf } from './in-touch.ts';
import type { Reading } from './readings.ts';

/** The reading of `size` of `kind`. `links` says which pieces of the stack touch. */
export function laidSizeReading(
  layout: Layout & { kind: 'laid-out' },
  kinds: PieceKinds,
  stack: Stack,
  links: readonly (readonly Link[])[],
  kind: string,
  size: string,
): Reading {
  const drift = driftOf(links, growthOf(layout.pieces, stack, kind, largerSolid(kinds, kind, size)));
  return {
    nudgeMm: NUDGE_MM / Math.max(1, ...drift.map(length2)),
    nudged: (byMm) => ({
      layout: { kind: 'laid-out', pieces: layout.pieces.map((piece, index) => moved(piece, drift[index], byMm)) },
      kinds: resized(kinds, kind, size, byMm),
    }),
  };
}

/** The kinds with one size of one of them larger by `byMm`. */
export function resized(kinds: PieceKinds, kind: string, size: string, byMm: number): PieceKinds {
  const spec = kinds.get(kind);
  if (spec === undefined) return kinds;
  const sizes = { ...spec.sizes, [size]: (spec.sizes[size] ?? 0) + byMm };
  return new Map(kinds).set(kind, { ...spec, sizes });
}

function moved(piece: LaidPiece, drift: Vec2 | undefined, byMm: number): LaidPiece {
  return drift === undefined ? piece : { ...piece, xMm: piece.xMm + drift[0] * byMm, yMm: piece.yMm + drift[1] * byMm };
}

/** How far the surface of a piece moves out along a level direction, per mm of the reading. */
function growthOf(
  laid: readonly LaidPiece[],
  stack: Stack,
  kind: string,
  larger: Larger | null,
): (piece: number, direction: Vec2) => number {
  return (index, direction) => {
    const [piece, place] = [stack.pieces[index], laid[index]];
    if (larger === null || piece === undefined || place === undefined || piece.kind !== kind) return 0;
    const grown = larger.solid.restings.find(({ id }) => id === piece.resting.id);
    if (grown === undefined) return 0;
    const own = turnedBack(direction, place.turnRad);
    return (reach(grown.outline, own) - reach(piece.resting.outline, own)) / larger.byMm;
  };
}

interface Larger {
  readonly solid: Solid;
  readonly byMm: number;
}

/** The solid with the reading a little larger, or smaller where it cannot be larger (`byMm` < 0). */
function largerSolid(kinds: PieceKinds, kind: string, size: string): Larger | null {
  for (const byMm of [NUDGE_MM, -NUDGE_MM]) {
    const spec = resized(kinds, kind, size, byMm).get(kind);
    const made = spec === undefined ? null : makeSolid(spec);
    if (made?.ok) return { solid: made.value, byMm };
  }
  return null;
}

/** A direction of the table in the own frame of a piece that was turned. */
function turnedBack([x, y]: Vec2, turnRad: number): Vec2 {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return [c * x + s * y, c * y - s * x];
}

/** How far the outline reaches along a unit direction. */
function reach(outline: Outline, direction: Vec2): number {
  return outline.kind === 'disc'
    ? dot2(outline.centre, direction) + outline.radiusMm
    : Math.max(...outline.points.map((point) => dot2(point, direction)));
}
