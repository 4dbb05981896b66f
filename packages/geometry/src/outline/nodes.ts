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
  for (const node of nodesOf(strands, nodeMm)) {
    for (const { arriving, leaving } of waysThrough(node)) joinIfFree(arriving, leaving);
  }
  const open = strands.filter((strand) => strand.next === undefined);
  for (const strand of open) {
    const nearest = nearestStart(strand, strands.filter((other) => !other.follows));
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

function nodesOf(strands: readonly Strand[], nodeMm: number): readonly Node[] {
  const ends = endsOf(strands).sort((a, b) => a.place - b.place);
  const groups = groupsOf(ends.length);
  let first = 0;
  ends.forEach((end, i) => {
    while ((ends[first]?.place ?? end.place) < end.place - nodeMm) first += 1;
    for (let j = first; j < i; j += 1) {
      const other = ends[j];
      if (other !== undefined && distanceBetween(end, other) <= nodeMm) groups.join(i, j);
    }
  });
  const nodes = new Map<number, Node>();
  ends.forEach(({ strand, isStart }, i) => {
    const group = groups.groupOf(i);
    const node = nodes.get(group) ?? { arriving: [], leaving: [] };
    nodes.set(group, node);
    (isStart ? node.leaving : node.arriving).push(strand);
  });
  for (const node of nodes.values()) closeTiny(node, nodeMm);
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
  const [onlyIn, onlyOut] = [arriving[0], leaving[0]];
  if (arriving.length === 1 && leaving.length === 1 && onlyIn !== undefined && onlyOut !== undefined) {
    return [{ arriving: onlyIn, leaving: onlyOut, outsideRad: 0 }];
  }
  const ways = arriving.flatMap((a) =>
    leaving.map((b): Way => ({ arriving: a, leaving: b, outsideRad: turnTo(angleBack(a), angleOn(b)) })),
  );
  return ways.sort((p, q) => p.outsideRad - q.outsideRad);
}

function joinIfFree(arriving: Strand, leaving: Strand): void {
  if (arriving.next === undefined && !leaving.follows) follow(arriving, leaving);
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
