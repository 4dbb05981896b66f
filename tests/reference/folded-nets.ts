// Folds a flat net back into its solid: a second way to the shape, by the angles between the faces alone. The sheet lies
// printed side up (+z); the first face of a part stays, and whatever hangs on it is turned up about the fold, towards
// whoever looks at the print, by the angle between the outward normals. mm, rad.

import type { Solid, Vec2, Vec3 } from '@cairnmark/geometry';
import { add3, cross3, dot3, length3, scale3, sub3, unit3 } from '@cairnmark/geometry';
import type { Net, NetPart, NetTab, Path } from '@cairnmark/nets';

export interface FoldedPart {
  /** Face number -> its corners, where folding brings them. */
  readonly faces: ReadonlyMap<number, readonly Vec3[]>;
  /** Each tab's corners when it is folded in behind its mate. */
  readonly tabs: readonly { readonly tab: NetTab; readonly corners: readonly Vec3[] }[];
}

/** A turn and a shift of space; `turn` holds the images of x, y and z. */
interface Move {
  readonly turn: readonly [Vec3, Vec3, Vec3];
  readonly shift: Vec3;
}

/** A part of a net folded, still on its sheet: its first face lies on z = 0. `bend` may falsify an angle. */
export function folded(
  part: NetPart,
  solid: Solid,
  bend: (angle: number, fold: number) => number = (a) => a,
): FoldedPart {
  const moves = new Map<number, Move>([[part.faces[0]!.face, STILL]]);
  part.folds.forEach((fold, k) => {
    if (fold.kind !== 'face') return;
    const [parent, child] = fold.between;
    const [from, to] = pointsOf(fold.path) as [Vec2, Vec2];
    const angle = bend(between(solid, parent, child), k);
    moves.set(child, after(moves.get(parent)!, about(from, to, angle)));
  });
  const faces = part.faces.map(({ face, outline }) => {
    return [face, pointsOf(outline).map((point) => applied(moves.get(face)!, flat(point)))] as const;
  });
  const tabs = part.tabs.map((tab) => {
    const ring = pointsOf(tab.outline);
    const turn = about(ring[0]!, ring[3]!, between(solid, tab.host, tab.mate));
    return { tab, corners: ring.map((point) => applied(after(moves.get(tab.host)!, turn), flat(point))) };
  });
  return { faces: new Map(faces), tabs };
}

/**
 * How far the folded net is from its solid, mm: the farthest corner when the first face of each part is laid on the face
 * that it stands for. The faces of the solid run clockwise on the sheet, which shows the inside.
 */
export function foldBackErrorMm(net: Net, bend?: (angle: number, fold: number) => number): number {
  return Math.max(...net.parts.map((part) => partError(folded(part, net.solid, bend), net.solid)));
}

/** Where the centre of each tab comes to lie, in the solid's own frame. */
export function tabCentres(net: Net): readonly { readonly tab: NetTab; readonly centre: Vec3 }[] {
  return net.parts.flatMap((part) => {
    const { faces, tabs } = folded(part, net.solid);
    const home = homeOf(faces, net.solid);
    return tabs.map(({ tab, corners }) => ({ tab, centre: applied(home, centreOf(corners)) }));
  });
}

export const pointsOf = ({ start, steps }: Path): readonly Vec2[] => [start, ...steps.map(({ to }) => to)];

const STILL: Move = {
  turn: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  shift: [0, 0, 0],
};

const flat = ([x, y]: Vec2): Vec3 => [x, y, 0];

function partError({ faces }: FoldedPart, solid: Solid): number {
  const home = homeOf(faces, solid);
  const errors = [...faces].flatMap(([face, corners]) => {
    const own = cornersOf(solid, face);
    return corners.map((corner, k) => length3(sub3(applied(home, corner), own[k]!)));
  });
  return Math.max(...errors);
}

/** The rigid move from the sheet of a part to its solid, by three corners of its first face. Never a mirror image. */
function homeOf(faces: FoldedPart['faces'], solid: Solid): Move {
  const [[face, here]] = [...faces] as [[number, readonly Vec3[]]];
  const [from, to] = [frameOf(here), frameOf(cornersOf(solid, face))];
  const turn = [0, 1, 2].map((axis) => {
    return [0, 1, 2].reduce<Vec3>((sum, k) => add3(sum, scale3(to[k]!, from[k]![axis as 0 | 1 | 2])), [0, 0, 0]);
  }) as unknown as Move['turn'];
  const start = applied({ turn, shift: [0, 0, 0] }, here[0]!);
  return { turn, shift: sub3(cornersOf(solid, face)[0]!, start) };
}

function frameOf([a, b, c]: readonly Vec3[]): readonly Vec3[] {
  const x = unit3(sub3(b!, a!));
  const z = unit3(cross3(x, sub3(c!, a!)));
  return [x, cross3(z, x), z];
}

/** The corners of a face in the order in which they stand on the sheet. */
function cornersOf(solid: Solid, face: number): readonly Vec3[] {
  const found = solid.flatFaces[face]!;
  return found.kind === 'polygon' ? [...found.corners].reverse() : [];
}

function between(solid: Solid, one: number, other: number): number {
  const [a, b] = [solid.flatFaces[one]!.normal, solid.flatFaces[other]!.normal];
  return Math.atan2(length3(cross3(a, b)), dot3(a, b));
}

/** Rodrigues' turn about the line through two points of the sheet: what lies to its right comes up. */
function about(from: Vec2, to: Vec2, angle: number): Move {
  const axis = unit3([from[0] - to[0], from[1] - to[1], 0]);
  const spun = (v: Vec3): Vec3 =>
    add3(
      add3(scale3(v, Math.cos(angle)), scale3(cross3(axis, v), Math.sin(angle))),
      scale3(axis, dot3(axis, v) * (1 - Math.cos(angle))),
    );
  const turn: Move['turn'] = [spun([1, 0, 0]), spun([0, 1, 0]), spun([0, 0, 1])];
  return { turn, shift: sub3(flat(from), applied({ turn, shift: [0, 0, 0] }, flat(from))) };
}

const applied = ({ turn: [x, y, z], shift }: Move, [a, b, c]: Vec3): Vec3 =>
  add3(shift, add3(scale3(x, a), add3(scale3(y, b), scale3(z, c))));

function after(then: Move, first: Move): Move {
  const only = (v: Vec3): Vec3 => sub3(applied(then, v), then.shift);
  return { turn: [only(first.turn[0]), only(first.turn[1]), only(first.turn[2])], shift: applied(then, first.shift) };
}

/** The centre of the area of a flat convex figure in space. */
function centreOf(corners: readonly Vec3[]): Vec3 {
  let [weight, moment]: [number, Vec3] = [0, [0, 0, 0]];
  for (let k = 1; k + 1 < corners.length; k += 1) {
    const [a, b, c] = [corners[0]!, corners[k]!, corners[k + 1]!];
    const area = length3(cross3(sub3(b, a), sub3(c, a)));
    weight += area;
    moment = add3(moment, scale3(add3(a, add3(b, c)), area / 3));
  }
  return scale3(moment, 1 / weight);
}
