// A union walked once exactly, for its area, and counted once with narrow gaps closed, for everything else; sorted into the
// loops that are counted. mm.

import type { Outline } from '../kernel/outline.ts';
import { contactsOf } from './contacts.ts';
import type { CountedBoundary, WalkedUnion } from './counted.ts';
import { countedBoundary } from './counted.ts';
import type { Loop } from './loops.ts';
import { loopsOf, widthOf } from './loops.ts';
import { nearBoxes } from './near.ts';
import { joinAtNodes } from './nodes.ts';
import type { LocalFrame } from './pieces-of.ts';
import { frameOf, piecesOf } from './pieces-of.ts';
import { areVisible } from './swallow.ts';
import { walk, wholeBoundary } from './walk.ts';

/**
 * How narrow gaps count. The area of a union never depends on it; perimeter, parts, holes and courtyard do:
 * - Outlines no further apart than a contact touch, also at a point. Touching joins them to one part.
 * - Straight sides that look at each other across a gap no wider than the allowance (FACING_RAD from parallel at most) give
 *   way as far as it is that narrow. The straight way across at each end of it, a mouth, counts instead.
 * - Where outlines only come near at a place (two rims, a corner at a side) nothing gives way; the narrowest line between
 *   them, a link, joins them, and is counted on both of its sides.
 * - A mouth or link no wider than a contact adds no length.
 * - A hole no wider than the allowance (see widthOf) is closed too, such as the crossing of two gaps.
 */
export interface GapPolicy {
  readonly contactMm: number;
  /** The widest gap that counts as closed; no less than a contact matters. */
  readonly gapAllowanceMm: number;
}

export interface CountedUnion extends CountedBoundary {
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

export function countedUnion(outlines: readonly Outline[], { contactMm, gapAllowanceMm }: GapPolicy): CountedUnion {
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

/** A loop of no more nodes than this in length is rounding. */
const SPECK_NODES = 4;

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

const partition = <T>(items: readonly T[], test: (item: T) => boolean): readonly [readonly T[], readonly T[]] => [
  items.filter(test),
  items.filter((item) => !test(item)),
];
