// The ground a build stands on, by the definition that the challenge chose: the outlines of the pieces that touch the
// table, the contact patches alone, or the convex hull of all contacts. Plane of the table, mm.
// A ball touches at a point: its outline has an area, its patch has none.

import type { Outline } from '../kernel/outline.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import type { HullFacts, UnionFacts } from '../outline/index.ts';
import { hullOf, unionFacts } from '../outline/index.ts';
import type { PlacedPiece, Stack, TracedOutline } from '../stack/types.ts';
import { leastWidthMm } from './least-width.ts';
import type { Shown } from './measure.ts';
import { notShown, shown } from './measure.ts';
import { patchesOnTable, pointsOnTable } from './table-contact.ts';
import type { GapPlace, MeasureOptions, Working } from './types.ts';

export interface Base {
  readonly areaMm2: number;
  /** Outer perimeter, all parts together. */
  readonly perimeterMm: number;
  /** Least width of its convex hull. */
  readonly widthMm: number;
  /** Narrow places counted as closed for the perimeter. */
  readonly gaps: readonly GapPlace[];
  readonly method: Working['method'];
}

/**
 * The base of a stack of at least one piece. `footprint` and `hull` are those of the whole stack, taken over where every
 * piece is on the table.
 */
export function baseOfStack(stack: Stack, footprint: UnionFacts, hull: HullFacts, options: MeasureOptions): Base {
  const onTable = piecesOnTable(stack);
  switch (options.base) {
    case 'outline-of-pieces-on-table':
      return onTable.length === stack.pieces.length
        ? baseOfUnion(footprint, hull)
        : unionBase(
            onTable.map((piece) => piece.outline),
            options,
          );
    case 'contact-patches':
      return unionBase(onTable.flatMap(patchesOnTable), options);
    case 'hull-of-contacts':
      return hullBase(onTable.flatMap((piece) => [...patchesOnTable(piece), ...pointsOnTable(piece)]));
  }
}

/** The base of a traced build: the outlines marked as on the table. Contacts do not show on a photo from above. */
export function baseOfTraced(outlines: readonly TracedOutline[], options: MeasureOptions): Shown<Base> {
  const onTable = outlines.filter((traced) => traced.onTable).map((traced) => traced.outline);
  return onTable.length === 0 || options.base !== 'outline-of-pieces-on-table'
    ? notShown('traced-outline-only')
    : shown(unionBase(onTable, options));
}

/** Pieces that touch the table. One that hangs over it by more than a contact does not, even where it is carried. */
function piecesOnTable(stack: Stack): readonly PlacedPiece[] {
  const touching = new Set(
    stack.supports
      .filter(({ lower, closedMm }) => lower === 'table' && closedMm <= CONTACT_MM)
      .map(({ upper }) => upper),
  );
  return stack.pieces.filter((piece) => touching.has(piece.index));
}

function unionBase(outlines: readonly Outline[], options: MeasureOptions): Base {
  const union = unionFacts(outlines, { contactMm: CONTACT_MM, gapAllowanceMm: options.gapAllowanceMm });
  return baseOfUnion(union, hullOf(outlines));
}

function baseOfUnion({ areaMm2, outerPerimeterMm, gaps }: UnionFacts, hull: HullFacts): Base {
  return { areaMm2, perimeterMm: outerPerimeterMm, widthMm: leastWidthMm(hull), gaps, method: 'boundary-walk' };
}

function hullBase(contacts: readonly Outline[]): Base {
  const hull = hullOf(contacts);
  const { areaMm2, perimeterMm } = hull;
  return { areaMm2, perimeterMm, widthMm: leastWidthMm(hull), gaps: [], method: 'hull' };
}
