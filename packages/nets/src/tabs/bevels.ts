// How far the ends of a tab may stand up. On the sheet it shares the free angle at its end with what lies beside it; glued,
// it shares the corner of its mate with the tab of the edge beside it. Where two tabs meet, each has half. rad.

import type { Vec2 } from '@cairnmark/geometry';
import { cross2, dot2, sub2 } from '@cairnmark/geometry';
import { SCISSORS_GAP_RAD, STEEPEST_BEVEL_RAD } from '../tolerance.ts';
import type { FaceTable } from '../unfold/faces.ts';
import { across } from '../unfold/faces.ts';
import type { Copy, Seams } from './seams.ts';
import { keyOf } from './seams.ts';
import type { Bevels } from './tab-shape.ts';

/** What each side of the rims bears, by the key of its face and mate. */
export type Hosts = ReadonlyMap<string, 'tab' | 'nothing' | 'undecided'>;

/** A side that is no seam is not in the map, and bears nothing. */
const bears = (hosts: Hosts, face: number, mate: number): boolean =>
  (hosts.get(keyOf(face, mate)) ?? 'nothing') !== 'nothing';

/** The steepest ends for a tab on `copy`. What is undecided beside it counts as a tab. */
export function bevelsOn(table: FaceTable, { rims }: Seams, hosts: Hosts, copy: Copy): Bevels {
  const rim = rims[copy.sheet] ?? [];
  const [before, after] = [rim.at(copy.position - 1) ?? copy, rim[(copy.position + 1) % rim.length] ?? copy];
  const mate = mateCorners(table, hosts, copy);
  return {
    atA: Math.min(STEEPEST_BEVEL_RAD, freeShare(copy, before, copy.freeAtA, hosts), mate.atA),
    atB: Math.min(STEEPEST_BEVEL_RAD, freeShare(copy, after, copy.freeAtB, hosts), mate.atB),
  };
}

/** Where the angle is less than two gaps for the scissors, the gap has to be less than one. */
function freeShare(copy: Copy, beside: Copy, free: number, hosts: Hosts): number {
  const isMate = beside.face === copy.mate && beside.mate === copy.face;
  const own = Math.max(free - SCISSORS_GAP_RAD, free / 2);
  return !isMate && bears(hosts, beside.face, beside.mate) ? own / 2 : own;
}

/** The corners of the mate at the two ends of `copy`, halved where another tab may land beside it. */
function mateCorners(table: FaceTable, hosts: Hosts, copy: Copy): Bevels {
  const ring = table.faces[copy.mate]?.ring ?? [];
  const at = ring.findIndex((_, k) => across(table, copy.mate, k) === copy.face);
  const [before, after] = [(at + ring.length - 1) % ring.length, (at + 1) % ring.length];
  const share = (side: number): number => (mayLand(table, hosts, copy.mate, side) ? 2 : 1);
  // The mate's side runs the other way: it ends where the tab's edge begins.
  return { atA: cornerAt(ring, after) / share(after), atB: cornerAt(ring, at) / share(before) };
}

/** Whether a tab lands on `face` along that side: not along a fold. */
const mayLand = (table: FaceTable, hosts: Hosts, face: number, side: number): boolean =>
  bears(hosts, across(table, face, side), face);

function cornerAt(ring: readonly Vec2[], k: number): number {
  const corner = (at: number): Vec2 => ring[(at + ring.length) % ring.length] ?? [0, 0];
  const [onward, back] = [sub2(corner(k + 1), corner(k)), sub2(corner(k - 1), corner(k))];
  return Math.atan2(cross2(onward, back), dot2(onward, back));
}
