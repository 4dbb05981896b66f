// The way round a laid-out sheet, counter-clockwise: the sides of its faces that are no folds, in order. It is found by
// walking from side to side, so nothing has to be cut or joined. mm, angles in rad.

import type { Vec2 } from '@cairnmark/geometry';
import { cross2, dot2, sub2 } from '@cairnmark/geometry';
import type { FaceTable } from './faces.ts';
import { across, sideFrom } from './faces.ts';
import type { LaidFace, Sheet } from './unfold.ts';
import { sideOf } from './unfold.ts';

/** A side of a face on the rim of its sheet. It runs from `a` to `b`, with the paper on its left. */
export interface RimSide {
  readonly face: number;
  /** The number of the side in its face. */
  readonly at: number;
  readonly a: Vec2;
  readonly b: Vec2;
  /** The face that has the same edge in space. */
  readonly mate: number;
  /** What is free of paper at `a`, from this side round to the side before it; and at `b`, round to the side after it. */
  readonly freeAtA: number;
  readonly freeAtB: number;
}

/** The sides on the rim of `sheet`, in order. */
export function rimOf(table: FaceTable, sheet: Sheet): readonly RimSide[] {
  const faces = new Map(sheet.faces.map((laid) => [laid.face, laid]));
  const folds = new Set(sheet.joints.flatMap(([a, b]) => [`${a} ${b}`, `${b} ${a}`]));
  const isFold = (face: number, at: number): boolean => folds.has(`${face} ${across(table, face, at)}`);
  const sides = sheet.faces.flatMap(({ face, ring }) => ring.map((_, at) => ({ face, at })));
  const first = sides.find(({ face, at }) => !isFold(face, at));
  if (first === undefined) return [];
  const rim: { face: number; at: number }[] = [];
  let here = first;
  do {
    rim.push(here);
    here = onward(table, here, isFold);
  } while (here.face !== first.face || here.at !== first.at);
  return withAngles(rim.map(({ face, at }) => bare(table, faces.get(face), at)));
}

interface Place {
  readonly face: number;
  readonly at: number;
}

/** The next side on the rim: the next of the same face, or past a fold the one after it on the other face. */
function onward(table: FaceTable, { face, at }: Place, isFold: (face: number, at: number) => boolean): Place {
  const corners = table.faces[face]?.corners ?? [];
  const next = (at + 1) % corners.length;
  if (!isFold(face, next)) return { face, at: next };
  const other = across(table, face, next);
  const theirs = table.faces[other]?.corners ?? [];
  const entry = sideFrom(theirs, corners[(next + 1) % corners.length] ?? -1, corners[next] ?? -1);
  return onward(table, { face: other, at: entry }, isFold);
}

function bare(table: FaceTable, laid: LaidFace | undefined, at: number): Omit<RimSide, 'freeAtA' | 'freeAtB'> {
  if (laid === undefined) throw new RangeError('the walk left its sheet');
  const [a, b] = sideOf(laid.ring, at);
  return { face: laid.face, at, a, b, mate: across(table, laid.face, at) };
}

function withAngles(rim: readonly Omit<RimSide, 'freeAtA' | 'freeAtB'>[]): readonly RimSide[] {
  const free = rim.map((side, k) => {
    const before = rim.at(k - 1) ?? side;
    return 2 * Math.PI - turnBetween(sub2(side.b, side.a), sub2(before.a, side.a));
  });
  return rim.map((side, k) => ({ ...side, freeAtA: free[k] ?? 0, freeAtB: free[(k + 1) % free.length] ?? 0 }));
}

/** From one direction counter-clockwise to another, 0 to 2 pi. */
function turnBetween(from: Vec2, to: Vec2): number {
  const angle = Math.atan2(cross2(from, to), dot2(from, to));
  return angle < 0 ? angle + 2 * Math.PI : angle;
}
