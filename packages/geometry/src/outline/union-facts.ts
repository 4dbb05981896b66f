// Area, perimeter, parts and holes of a union of outlines, on true arcs and straight sides, and the narrow gaps that were
// counted as closed for perimeter, parts and holes; mm. How gaps count is written down in OUTLINES.md beside this file.
// Method: what of each boundary lies inside no other outline bounds the union; its area by Green's theorem.

import type { Outline } from '../kernel/outline.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { add2 } from '../kernel/vec.ts';
import type { BoundaryPart } from './boundary.ts';
import { boundaryPart } from './boundary.ts';
import { contactsOf } from './contacts.ts';
import type { WalkedUnion } from './counted.ts';
import { countedBoundary } from './counted.ts';
import { areaUnder } from './edge.ts';
import type { ClosedGap } from './gaps.ts';
import { gapsOf } from './gaps.ts';
import type { NarrowPlace } from './links.ts';
import type { Loop } from './loops.ts';
import { loopsOf } from './loops.ts';
import { nearBoxes } from './near.ts';
import { joinAtNodes } from './nodes.ts';
import type { LocalFrame } from './pieces-of.ts';
import { frameOf, piecesOf } from './pieces-of.ts';
import { unswallowed } from './swallow.ts';
import { walk, wholeBoundary } from './walk.ts';

export interface GapPolicy {
  /** Outlines no further apart than this touch; the way across such a gap adds no length. */
  readonly contactMm: number;
  /** Wider gaps, up to this width, are counted as closed too; the way across them adds its length. */
  readonly gapAllowanceMm: number;
}

export interface UnionLoop {
  readonly isHole: boolean;
  readonly parts: readonly BoundaryPart[];
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
  /** The ways round as counted, for drawing. */
  readonly loops: readonly UnionLoop[];
}

/**
 * The facts of the union of `outlines`, any way round, convex or not, self-crossing rings by the non-zero rule. Outlines
 * without area add nothing. Throws RangeError on a coordinate that is not finite.
 */
export function unionFacts(outlines: readonly Outline[], { contactMm, gapAllowanceMm }: GapPolicy): UnionFacts {
  const frame = frameOf(outlines);
  const reachMm = Math.max(contactMm, gapAllowanceMm);
  const union = walkedUnion(outlines, reachMm, frame);
  const { strands, fillings, links } = countedBoundary(union, reachMm);
  joinAtNodes(strands, frame.nodeMm);
  // A wedge filled just to a contact's width must not count as wider by rounding.
  const touchingMm = contactMm + frame.nodeMm;
  const loops = loopsOf(strands, touchingMm);
  const outer = loops.filter((loop) => loop.signedAreaMm2 >= 0);
  const [closed, open] = partition(loops.filter((loop) => loop.signedAreaMm2 < 0), (loop) => widthOf(loop) <= reachMm);
  const gaps = [
    ...gapsOf(fillings, touchingMm, frame.nodeMm),
    ...links.filter(({ gapMm }) => gapMm > touchingMm).map(gapAtLink),
    ...closed.filter((loop) => widthOf(loop) > touchingMm && isAllOutline(loop)).map(gapAtHole),
  ];
  // What is no wider than a node is rounding: it has no length to speak of, but must not be counted or drawn.
  const holes = open.filter((loop) => widthOf(loop) > frame.nodeMm);
  return {
    areaMm2: areaOf(union),
    outerPerimeterMm: sumOf(outer, (loop) => loop.lengthMm),
    innerPerimeterMm: sumOf(open, (loop) => loop.lengthMm),
    parts: union.contacts.countParts(),
    holes: holes.length,
    courtyardMm2: sumOf(holes, (loop) => -loop.signedAreaMm2),
    gaps: gaps.map(({ at, widthMm }) => ({ at: add2(at, frame.origin), widthMm })),
    loops: [
      ...outer.filter((loop) => loop.wayMm > 4 * frame.nodeMm).map((loop) => drawn(loop, false, frame.origin)),
      ...holes.map((loop) => drawn(loop, true, frame.origin)),
    ],
  };
}

function walkedUnion(outlines: readonly Outline[], reachMm: number, frame: LocalFrame): WalkedUnion {
  const { noiseMm, nodeMm } = frame;
  const pieces = unswallowed(piecesOf(outlines, frame), noiseMm);
  const near = nearBoxes(pieces, Math.max(reachMm, noiseMm));
  const contacts = contactsOf(pieces.length, nodeMm);
  const left = walk({ pieces, near, noiseMm, meet: contacts.touch }, wholeBoundary);
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
    at: [sumOf(loop.strands, (one) => one.startX) / count, sumOf(loop.strands, (one) => one.startY) / count],
    widthMm: widthOf(loop),
  };
}

const drawn = (loop: Loop, isHole: boolean, origin: Vec2): UnionLoop => ({
  isHole,
  parts: loop.strands.map((strand) => boundaryPart(strand, origin)),
});

const partition = <T>(items: readonly T[], test: (item: T) => boolean): readonly [readonly T[], readonly T[]] => [
  items.filter(test),
  items.filter((item) => !test(item)),
];

const sumOf = <T>(items: readonly T[], value: (item: T) => number): number =>
  items.reduce((total, item) => total + value(item), 0);
