// Area, perimeter, parts and holes of a union of outlines, on true arcs and straight sides, and the narrow gaps that were
// counted as closed for perimeter, parts and holes; mm. How gaps count is written down in OUTLINES.md beside this file.
// Method: what of each boundary lies inside no other outline bounds the union; its area by Green's theorem.

import type { Outline } from '../kernel/outline.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { add2 } from '../kernel/vec.ts';
import type { BoundaryPart } from './boundary.ts';
import { boundaryParts } from './boundary.ts';
import { contactsOf } from './contacts.ts';
import type { CountedBoundary, WalkedUnion } from './counted.ts';
import { countedBoundary } from './counted.ts';
import { areaUnder, xAt, yAt } from './edge.ts';
import type { ClosedGap } from './gaps.ts';
import { gapsOf } from './gaps.ts';
import type { NarrowPlace } from './links.ts';
import type { Loop } from './loops.ts';
import { loopsOf } from './loops.ts';
import { nearBoxes } from './near.ts';
import { joinAtNodes } from './nodes.ts';
import type { LocalFrame } from './pieces-of.ts';
import { frameOf, piecesOf } from './pieces-of.ts';
import { areVisible } from './swallow.ts';
import { walk, wholeBoundary } from './walk.ts';

export interface GapPolicy {
  /** Outlines no further apart than this touch; the way across such a gap adds no length. */
  readonly contactMm: number;
  /** Wider gaps, up to this width, are counted as closed too; the way across them adds its length. */
  readonly gapAllowanceMm: number;
}

export interface UnionFacts {
  /** Exact area of the union: contact and gap allowance never change it. */
  readonly areaMm2: number;
  readonly outerPerimeterMm: number;
  readonly innerPerimeterMm: number;
  /** Groups of outlines that touch, at a point too, or come within the gap allowance. */
  readonly parts: number;
  readonly holes: number;
  /** Area of the holes, as closed by mouths and links. */
  readonly courtyardMm2: number;
  readonly gaps: readonly ClosedGap[];
}

/** A way round the counted region: counter-clockwise, or clockwise round a hole. */
export interface UnionLoop {
  readonly isHole: boolean;
  readonly parts: readonly BoundaryPart[];
}

/**
 * The facts of the union of `outlines`, any way round, convex or not, self-crossing rings by the non-zero rule. Outlines
 * without area add nothing. Throws RangeError on a coordinate that is not finite.
 */
export function unionFacts(outlines: readonly Outline[], policy: GapPolicy): UnionFacts {
  const { union, outer, holes, specks, closed, fillings, links, touchingMm } = countedUnion(outlines, policy);
  const { origin, nodeMm } = union.frame;
  const gaps = [
    ...gapsOf(fillings, touchingMm, nodeMm),
    ...links.filter(({ gapMm }) => gapMm > touchingMm).map(gapAtLink),
    ...closed.filter((loop) => widthOf(loop) > touchingMm && isAllOutline(loop)).map(gapAtHole),
  ];
  return {
    areaMm2: areaOf(union),
    outerPerimeterMm: sumOf([...outer, ...specks], (loop) => loop.lengthMm),
    innerPerimeterMm: sumOf(holes, (loop) => loop.lengthMm),
    parts: union.contacts.countParts(),
    holes: holes.length,
    courtyardMm2: sumOf(holes, (loop) => -loop.signedAreaMm2),
    gaps: gaps.map(({ at, widthMm }) => ({ at: add2(at, origin), widthMm })),
  };
}

/** The counted ways round of a union, for drawing: what `unionFacts` measures. */
export function unionLoops(outlines: readonly Outline[], policy: GapPolicy): readonly UnionLoop[] {
  const { union, outer, holes } = countedUnion(outlines, policy);
  const { origin } = union.frame;
  return [...outer.map((loop) => drawn(loop, false, origin)), ...holes.map((loop) => drawn(loop, true, origin))];
}

/** A union with its counted boundary sorted into loops. */
interface CountedUnion extends CountedBoundary {
  readonly union: WalkedUnion;
  readonly outer: readonly Loop[];
  readonly holes: readonly Loop[];
  /** Loops no longer than a few nodes: rounding, of no length to speak of, neither counted nor drawn. */
  readonly specks: readonly Loop[];
  /** Holes no wider than the gaps that count as closed. */
  readonly closed: readonly Loop[];
  /** Gaps up to this width are contacts. */
  readonly touchingMm: number;
}

function countedUnion(outlines: readonly Outline[], { contactMm, gapAllowanceMm }: GapPolicy): CountedUnion {
  const frame = frameOf(outlines);
  const reachMm = Math.max(contactMm, gapAllowanceMm);
  // A wedge filled just to a contact's width must not count as wider by rounding.
  const touchingMm = contactMm + frame.nodeMm;
  const union = walkedUnion(outlines, reachMm, frame);
  const counted = countedBoundary(union, reachMm);
  joinAtNodes(counted.strands, frame.nodeMm);
  const [specks, loops] = partition(
    loopsOf(counted.strands, touchingMm),
    (loop) => loop.wayMm <= SPECK_NODES * frame.nodeMm,
  );
  const [outer, inner] = partition(loops, (loop) => loop.signedAreaMm2 >= 0);
  const [closed, holes] = partition(inner, (loop) => widthOf(loop) <= reachMm);
  return { ...counted, union, outer, holes, specks, closed, touchingMm };
}

function walkedUnion(outlines: readonly Outline[], reachMm: number, frame: LocalFrame): WalkedUnion {
  const { roundingMm, noiseMm, nodeMm } = frame;
  const all = piecesOf(outlines, frame);
  const nearAll = nearBoxes(all, Math.max(reachMm, noiseMm));
  const visible = areVisible(all, nearAll, noiseMm);
  const pieces = all.filter((_, i) => visible[i]);
  const near = pieces.length === all.length ? nearAll : nearBoxes(pieces, Math.max(reachMm, noiseMm));
  const contacts = contactsOf(pieces.length, nodeMm);
  const left = walk({ pieces, near, roundingMm, noiseMm, meet: contacts.touch }, wholeBoundary);
  return { pieces, left, near, contacts, frame };
}

/** Green's theorem over what is left of all boundaries. */
function areaOf({ pieces, left }: WalkedUnion): number {
  let areaMm2 = 0;
  pieces.forEach((piece, i) => {
    for (const edge of piece.edges) {
      for (const { from, to } of left[i]?.[edge.index] ?? []) areaMm2 += areaUnder(edge, from, to);
    }
  });
  return areaMm2;
}

/** A loop of no more nodes than this in length is rounding. */
const SPECK_NODES = 4;

/** Four areas by the way round: the diameter of a disc, the side of a square, the height of a long wedge. */
const widthOf = (loop: Loop): number => (-4 * loop.signedAreaMm2) / loop.wayMm;

const isAllOutline = (loop: Loop): boolean => loop.strands.every((strand) => strand.acrossMm === 0);

const gapAtLink = ({ onA, onB, gapMm }: NarrowPlace): ClosedGap => ({
  at: [(onA.x + onB.x) / 2, (onA.y + onB.y) / 2],
  widthMm: gapMm,
});

function gapAtHole(loop: Loop): ClosedGap {
  const count = loop.strands.length;
  return {
    at: [
      sumOf(loop.strands, ({ first, from }) => xAt(first, from)) / count,
      sumOf(loop.strands, ({ first, from }) => yAt(first, from)) / count,
    ],
    widthMm: widthOf(loop),
  };
}

const drawn = (loop: Loop, isHole: boolean, origin: Vec2): UnionLoop => ({
  isHole,
  parts: loop.strands.flatMap((strand) => boundaryParts(strand, origin)),
});

const partition = <T>(items: readonly T[], test: (item: T) => boolean): readonly [readonly T[], readonly T[]] => [
  items.filter(test),
  items.filter((item) => !test(item)),
];

const sumOf = <T>(items: readonly T[], value: (item: T) => number): number =>
  items.reduce((total, item) => total + value(item), 0);
