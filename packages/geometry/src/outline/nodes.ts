// Joins strands to loops at nodes, the places where boundaries meet. Where several meet in one node, the way goes on along
// the rim of the same part of the outside: boxes meeting at a corner have one way round, and four boxes meeting corner to
// corner enclose what is between them.

import { FULL_TURN, lengthBetween } from './edge.ts';
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
  readonly x: number;
  readonly y: number;
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
      if (other !== undefined && Math.hypot(end.x - other.x, end.y - other.y) <= nodeMm) groups.join(i, j);
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
  const add = (strand: Strand, isStart: boolean, x: number, y: number): void => {
    ends.push({ strand, isStart, x, y, place: x * Math.cos(1) + y * Math.sin(1) });
  };
  for (const strand of strands) {
    if (!strand.follows) add(strand, true, strand.startX, strand.startY);
    if (strand.next === undefined) add(strand, false, strand.endX, strand.endY);
  }
  return ends;
}

/** A strand no longer than a node, with both ends in it, is a loop of its own: its direction would tell nothing. */
function closeTiny({ arriving, leaving }: Node, nodeMm: number): void {
  for (const strand of arriving) {
    const lengthMm = lengthBetween(strand.edge, strand.from, strand.to);
    if (lengthMm <= 2 * nodeMm && leaving.includes(strand)) follow(strand, strand);
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
  return ways.length > 1 ? ways.sort((p, q) => p.outsideRad - q.outsideRad) : ways;
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
function angleOn({ edge, from, to }: Strand): number {
  if (edge.kind === 'side') return Math.atan2(edge.uy, edge.ux);
  return from + FULL_TURN / 4 + littleWay(from, to) / 2;
}

/** The direction back along the end of a strand. */
function angleBack({ edge, from, to }: Strand): number {
  if (edge.kind === 'side') return Math.atan2(-edge.uy, -edge.ux);
  return to - FULL_TURN / 4 - littleWay(from, to) / 2;
}

const littleWay = (from: number, to: number): number => Math.min(1e-3, (to - from) / 2);

function nearestStart({ endX, endY }: Strand, starts: readonly Strand[]): Strand | undefined {
  let nearest: Strand | undefined;
  let nearestMm = Number.POSITIVE_INFINITY;
  for (const start of starts) {
    const distance = Math.hypot(start.startX - endX, start.startY - endY);
    if (distance < nearestMm) [nearest, nearestMm] = [start, distance];
  }
  return nearest;
}
