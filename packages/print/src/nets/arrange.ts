// Where each part of each net lies: all kinds together, or pages of one kind each to photocopy.

import type { Result, Vec2 } from '@cairnmark/geometry';
import { add2, success } from '@cairnmark/geometry';
import type { NetPart } from '@cairnmark/nets';
import { FLATTEN_MM, flattenPath, turnPath } from '@cairnmark/nets';
import type { Area } from '../frame/frame.ts';
import type { PrintIssue } from '../issue.ts';
import { packMasters } from '../packing/pack-masters.ts';
import { packSheets } from '../packing/pack-sheets.ts';
import type { Item, Placement, Progress } from '../packing/types.ts';
import type { Fitted } from './fitted.ts';

export interface NetPage {
  readonly parts: readonly PlacedPart[];
  /** The kind that has the page to itself; null where kinds are mixed. */
  readonly kind: Fitted | null;
  /** How often it is needed. */
  readonly copies: number;
}

/** A part turned about its origin, then shifted, in the frame of the page. */
export interface PlacedPart {
  readonly of: Fitted;
  readonly part: NetPart;
  readonly turnRad: number;
  readonly shiftMm: Placement['shiftMm'];
}

export interface Arranged {
  readonly pages: readonly NetPage[];
  /** Nets on all pages, by kind id. */
  readonly counts: ReadonlyMap<string, number>;
}

type Outcome = Result<Arranged | null, PrintIssue>;

/** Every net as often as it was ordered. Null where `progress` stopped the work. */
export function mixed(fitted: readonly Fitted[], area: Area, progress: Progress): Outcome {
  const pieces = fitted.flatMap((of) =>
    Array.from({ length: of.kind.count }, (_, copy) => piecesOf(of, `${copy + 1}`)).flat(),
  );
  const packed = packSheets(pieces.map(itemOf), area, progress);
  if (!packed.ok || packed.value === null) return packed.ok ? success(null) : packed;
  const lay = layer(pieces, area);
  const pages = packed.value.map((placements): NetPage => ({ parts: lay(placements), kind: null, copies: 1 }));
  return success({ pages, counts: new Map(fitted.map(({ kind }) => [kind.id, kind.count])) });
}

/** Pages of each kind with as many of its nets as fit. Null where `progress` stopped the work. */
export function masters(fitted: readonly Fitted[], area: Area, progress: Progress): Outcome {
  const pieces = fitted.flatMap((of) => piecesOf(of, '1'));
  const packed = packMasters(pieces.map(itemOf), area, progress);
  if (!packed.ok || packed.value === null) return packed.ok ? success(null) : packed;
  const lay = layer(pieces, area);
  const made = packed.value.flatMap((master) => {
    const of = fitted.find(({ kind }) => kind.id === master.kind);
    return of === undefined ? [] : [{ ...master, of }];
  });
  const pages = made.flatMap(({ of, sets, pages: own }) =>
    own.map((placements): NetPage => {
      return { parts: lay(placements), kind: of, copies: Math.ceil(of.kind.count / sets) };
    }),
  );
  return success({ pages, counts: new Map(made.map(({ kind, sets }) => [kind, sets])) });
}

interface Piece {
  readonly id: string;
  readonly of: Fitted;
  readonly part: NetPart;
}

const piecesOf = (of: Fitted, copy: string): readonly Piece[] =>
  of.net.parts.map((part, k) => ({ id: `${of.kind.id} ${k + 1} ${copy}`, of, part }));

const itemOf = ({ id, of, part }: Piece): Item => ({
  id,
  kind: of.kind.id,
  outline: flattenPath(part.cut, FLATTEN_MM),
});

/** The parts of a page, as they were packed, with what is left of the page spread evenly round them. */
function layer(pieces: readonly Piece[], area: Area): (placements: readonly Placement[]) => readonly PlacedPart[] {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return (placements) => {
    const packed = placements.map(({ id, turnRad, shiftMm }): PlacedPart => {
      const piece = byId.get(id);
      if (piece === undefined) throw new RangeError(`no piece ${id}`);
      return { of: piece.of, part: piece.part, turnRad, shiftMm };
    });
    const corners = packed.flatMap(({ part, turnRad, shiftMm }) =>
      flattenPath(turnPath(part.cut, turnRad, shiftMm), FLATTEN_MM),
    );
    const toMiddle: Vec2 = [freeMm(corners, 0, area.widthMm) / 2, freeMm(corners, 1, area.heightMm) / 2];
    const by = add2(area.cornerMm, toMiddle);
    return packed.map((placed) => ({ ...placed, shiftMm: add2(placed.shiftMm, by) }));
  };
}

/** How far off the middle of the room the corners are, twice: across (0) or upwards (1). */
function freeMm(corners: readonly Vec2[], axis: 0 | 1, roomMm: number): number {
  const along = corners.map((corner) => corner[axis]);
  return roomMm - Math.min(...along) - Math.max(...along);
}
