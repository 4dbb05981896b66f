// Joins strands to loops at nodes, the places where boundaries meet. Where several meet in one node, the way goes on along
// the rim of the same part of the outside: boxes meeting at a corner have one way round, and four boxes meeting corner to
// corner enclose what is between them.

import type { Vec2 } from '../kernel/vec.ts';
import { endOf, FULL_TURN, xAt, yAt } from './edge.ts';
import { groupsOf } from './groups.ts';
import type { Strand } from './strands.ts';
import { follow } from './strands.ts';

/**
 * Gives every strand the one that follows it. Ends nearer than `nodeMm` are one node. Never fails: where rounding leaves
 * an end without a partner it goes on at the nearest free start, and if there is none it stays open.
 */
export function joinAtNodes(strands: readonly Strand[], nodeMm: number): void {
  const ends = endsOf(strands).sort((a, b) => a.place - b.place);
  let first = 0;
  for (let past = 1; past <= ends.length; past += 1) {
    if ((ends[past]?.place ?? Number.POSITIVE_INFINITY) - (ends[past - 1]?.place ?? 0) <= nodeMm) continue;
    joinWithin(ends.slice(first, past), nodeMm);
    first = past;
  }
  const open = strands.filter((strand) => strand.next === undefined);
  for (const strand of open) {
    const nearest = nearestStart(
      strand,
      strands.filter((other) => !other.follows),
    );
    if (nearest !== undefined) follow(strand, nearest);
  }
}

interface End {
  readonly strand: Strand;
  readonly isStart: boolean;
  /** The place along a slanted line along which no build is aligned: ends near each other are near on it. */
  readonly place: number;
}

interface Node {
  readonly arriving: Strand[];
  readonly leaving: Strand[];
}

/** Joins ends that are neighbours along the slanted line: as a rule just the two of one node. */
function joinWithin(ends: readonly End[], nodeMm: number): void {
  const [a, b] = ends;
  if (ends.length === 2 && a !== undefined && b !== undefined && a.isStart !== b.isStart) {
    const [arriving, leaving] = a.isStart ? [b, a] : [a, b];
    if (distanceBetween(a, b) <= nodeMm) follow(arriving.strand, leaving.strand);
    return;
  }
  for (const node of nodesAmong(ends, nodeMm)) {
    closeTiny(node, nodeMm);
    for (const { arriving, leaving } of waysThrough(node)) {
      if (arriving.next === undefined && !leaving.follows) follow(arriving, leaving);
    }
  }
}

function nodesAmong(ends: readonly End[], nodeMm: number): readonly Node[] {
  const groups = groupsOf(ends.length);
  ends.forEach((end, i) => {
    for (const [j, other] of ends.slice(0, i).entries()) {
      if (end.place - other.place <= nodeMm && distanceBetween(end, other) <= nodeMm) groups.join(i, j);
    }
  });
  const nodes = new Map<number, Node>();
  ends.forEach(({ strand, isStart }, i) => {
    const node = nodes.get(groups.groupOf(i)) ?? { arriving: [], leaving: [] };
    nodes.set(groups.groupOf(i), node);
    (isStart ? node.leaving : node.arriving).push(strand);
  });
  return [...nodes.values()];
}

function endsOf(strands: readonly Strand[]): End[] {
  const ends: End[] = [];
  const add = (strand: Strand, isStart: boolean): void => {
    const edge = isStart ? strand.first : strand.last;
    const at = isStart ? strand.from : strand.to;
    ends.push({ strand, isStart, place: xAt(edge, at) * SLANT_X + yAt(edge, at) * SLANT_Y });
  };
  for (const strand of strands) {
    if (!strand.follows) add(strand, true);
    if (strand.next === undefined) add(strand, false);
  }
  return ends;
}

const SLANT_X = Math.cos(1);
const SLANT_Y = Math.sin(1);

function distanceBetween(a: End, b: End): number {
  const [p, q] = [pointOf(a), pointOf(b)];
  return Math.hypot(p[0] - q[0], p[1] - q[1]);
}

function pointOf({ strand, isStart }: End): Vec2 {
  const { first, from, last, to } = strand;
  return isStart ? [xAt(first, from), yAt(first, from)] : [xAt(last, to), yAt(last, to)];
}

/** A strand no longer than a node, with both ends in it, is a loop of its own: its direction would tell nothing. */
function closeTiny({ arriving, leaving }: Node, nodeMm: number): void {
  for (const strand of arriving) {
    if (strand.lengthMm <= 2 * nodeMm && leaving.includes(strand)) follow(strand, strand);
  }
}

interface Way {
  readonly arriving: Strand;
  readonly leaving: Strand;
  /** From the way back along the arriving strand, counter-clockwise, to the leaving one: the angle of the outside, rad. */
  readonly outsideRad: number;
}

/** All ways through a node, the narrowest outside first. */
function waysThrough({ arriving, leaving }: Node): readonly Way[] {
  const ways = arriving.flatMap((a) =>
    leaving.map((b): Way => ({ arriving: a, leaving: b, outsideRad: turnTo(angleBack(a), angleOn(b)) })),
  );
  return ways.sort((p, q) => p.outsideRad - q.outsideRad);
}

/** Counter-clockwise from one angle to the other; a full turn when they are one. */
function turnTo(from: number, to: number): number {
  const turn = (((to - from) % FULL_TURN) + FULL_TURN) % FULL_TURN;
  return turn > 0 ? turn : FULL_TURN;
}

/** The direction in which a strand leaves, taken a little way along it, so that tangent arcs differ by how they bend. */
function angleOn({ first, from, to, edgeCount }: Strand): number {
  if (first.kind === 'side') return Math.atan2(first.uy, first.ux);
  return from + FULL_TURN / 4 + littleWay(from, edgeCount > 1 ? endOf(first) : to) / 2;
}

/** The direction back along the end of a strand. */
function angleBack({ last, from, to, edgeCount }: Strand): number {
  if (last.kind === 'side') return Math.atan2(-last.uy, -last.ux);
  return to - FULL_TURN / 4 - littleWay(edgeCount > 1 ? 0 : from, to) / 2;
}

const littleWay = (from: number, to: number): number => Math.min(1e-3, (to - from) / 2);

function nearestStart({ last, to }: Strand, starts: readonly Strand[]): Strand | undefined {
  const [x, y] = [xAt(last, to), yAt(last, to)];
  let nearest: Strand | undefined;
  let nearestMm = Number.POSITIVE_INFINITY;
  for (const start of starts) {
    const distance = Math.hypot(xAt(start.first, start.from) - x, yAt(start.first, start.from) - y);
    if (distance < nearestMm) [nearest, nearestMm] = [start, distance];
  }
  return nearest;
}
