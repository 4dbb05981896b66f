// One size of one kind as a reading, in a build that is laid out: when the size is nudged, every piece of the kind
// takes the new size and the pieces that touch it side by side stay in touch. mm; angles rad.

import { NUDGE_MM } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { length2 } from '../kernel/vec.ts';
import { makeSolid } from '../solids/catalogue.ts';
import type { Solid, SolidSpec } from '../solids/types.ts';
import type { LaidPiece, Layout, SolidsByKind, Stack } from '../stack/types.ts';
import { reachAlong } from './beside.ts';
import type { Build } from './build.ts';
import type { Link } from './in-touch.ts';
import { driftOf } from './in-touch.ts';
import type { Reading } from './readings.ts';

/** One size of one kind, as it was read. */
export interface SizeOfKind {
  readonly kind: string;
  readonly spec: SolidSpec;
  readonly name: string;
}

/** How the reading of a size is called. */
export const sizeId = ({ kind, name }: SizeOfKind): string => `${kind}/${name}`;

/** The reading of a size in a laid-out build. `links` says which pieces of the stack touch. */
export function laidSizeReading(
  layout: Layout & { kind: 'laid-out' },
  solids: SolidsByKind,
  stack: Stack,
  links: readonly (readonly Link[])[],
  size: SizeOfKind,
): Reading {
  const drift = driftOf(links, growthOf(layout.pieces, stack, size));
  return {
    id: sizeId(size),
    nudgeMm: NUDGE_MM / Math.max(1, ...drift.map(length2)),
    nudged: (byMm) => {
      const pieces = layout.pieces.map((piece, index) => moved(piece, drift[index], byMm));
      return withResized({ layout: { kind: 'laid-out', pieces }, solids }, size, byMm);
    },
  };
}

/** The build with the size larger by `byMm` in every piece of the kind; null when no solid has that size. */
export function withResized({ layout, solids }: Build, size: SizeOfKind, byMm: number): Build | null {
  const solid = resized(size, byMm);
  return solid === null ? null : { layout, solids: new Map(solids).set(size.kind, solid) };
}

function resized({ spec, name }: SizeOfKind, byMm: number): Solid | null {
  const made = makeSolid({ ...spec, sizes: { ...spec.sizes, [name]: (spec.sizes[name] ?? 0) + byMm } });
  return made.ok ? made.value : null;
}

function moved(piece: LaidPiece, drift: Vec2 | undefined, byMm: number): LaidPiece {
  return drift === undefined ? piece : { ...piece, xMm: piece.xMm + drift[0] * byMm, yMm: piece.yMm + drift[1] * byMm };
}

/** How far the surface of a piece moves out along a level direction, per mm of the reading. */
function growthOf(
  laid: readonly LaidPiece[],
  stack: Stack,
  size: SizeOfKind,
): (piece: number, direction: Vec2) => number {
  const larger = resized(size, NUDGE_MM);
  const [other, byMm] = larger === null ? [resized(size, -NUDGE_MM), -NUDGE_MM] : [larger, NUDGE_MM];
  return (index, direction) => {
    const [piece, place] = [stack.pieces[index], laid[index]];
    if (piece === undefined || place === undefined || piece.kind !== size.kind) return 0;
    const grown = other?.restings.find(({ id }) => id === piece.resting.id);
    if (grown === undefined) return 0;
    const own = turnedBack(direction, place.turnRad);
    return (reachAlong(grown.outline, own) - reachAlong(piece.resting.outline, own)) / byMm;
  };
}

/** A direction of the table in the own frame of a piece that was turned. */
function turnedBack([x, y]: Vec2, turnRad: number): Vec2 {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return [c * x + s * y, c * y - s * x];
}
