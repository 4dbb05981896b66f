// One tab for every seam. First each seam takes the better of its two sides: the one with room for a good tab, of two good
// ones the one that makes the net reach out less, then the one that is no lid. Then all tabs are fitted, and where one came out poor the other side is
// tried. mm.

import type { Vec2 } from '@cairnmark/geometry';
import { convexHull } from '@cairnmark/geometry';
import { figureOf, leftOf, sidesOf } from '../plane/convex.ts';
import { DEEPEST_SHARE, STEEPEST_BEVEL_RAD, TOUCH_RELATIVE } from '../tolerance.ts';
import type { FaceTable } from '../unfold/faces.ts';
import type { Sheet } from '../unfold/unfold.ts';
import type { Hosts } from './bevels.ts';
import { bevelsOn } from './bevels.ts';
import type { FittedTab, Occupied } from './fit-tab.ts';
import { fitTab, startDepthMm } from './fit-tab.ts';
import type { Copy, Seam, Seams } from './seams.ts';
import { keyOf, seamsOf } from './seams.ts';
import { tabShape } from './tab-shape.ts';

export interface PlacedTab extends FittedTab {
  readonly host: Copy;
  readonly mate: Copy;
}

export interface Tabs {
  readonly rims: Seams['rims'];
  readonly tabs: readonly PlacedTab[];
}

export function placeTabs(table: FaceTable, sheets: readonly Sheet[], depthMm: number): Tabs {
  const seams = seamsOf(table, sheets);
  const bench: Bench = { table, sheets, seams, depthMm, hulls: sheets.map(hullOf) };
  let best = fitted(bench, firstChoice(bench));
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const before = best;
    for (const [k, quality] of before.qualities.entries()) {
      if (quality < 1)
        best = better(
          best,
          fitted(
            bench,
            best.seams.map((seam, j) => (j === k ? swapped(seam) : seam)),
          ),
        );
    }
    if (best === before) break;
  }
  return { rims: seams.rims, tabs: best.tabs };
}

const MOST_ROUNDS = 2;

interface Bench {
  readonly table: FaceTable;
  readonly sheets: readonly Sheet[];
  readonly seams: Seams;
  readonly depthMm: number;
  /** Of each sheet without tabs. */
  readonly hulls: readonly (readonly Vec2[])[];
}

/** Seams with the side that bears the tab first. */
interface Fitted {
  readonly seams: readonly Seam[];
  readonly tabs: readonly PlacedTab[];
  readonly qualities: readonly number[];
}

const swapped = ([a, b]: Seam): Seam => [b, a];

function better(one: Fitted, other: Fitted): Fitted {
  const [a, b] = [one, other].map(({ qualities }) => qualities.reduce((sum, quality) => sum + quality, 0));
  return (b ?? 0) > (a ?? 0) + WORTH_A_CHANGE ? other : one;
}

const WORTH_A_CHANGE = 0.01;

function firstChoice(bench: Bench): readonly Seam[] {
  const undecided: Hosts = new Map(bench.seams.seams.flat().map((copy) => [keyOf(copy.face, copy.mate), 'undecided']));
  const lids = new Set(bench.sheets.flatMap((sheet) => sheet.lids));
  return bench.seams.seams.map((seam) => {
    const [a, b] = [prospect(bench, undecided, seam[0]), prospect(bench, undecided, seam[1])];
    if (Math.abs(a.quality - b.quality) > WORTH_A_CHANGE) return a.quality > b.quality ? seam : swapped(seam);
    const furtherMm = a.outreachMm - b.outreachMm;
    if (Math.abs(furtherMm) > TOUCH_RELATIVE * bench.depthMm) return furtherMm > 0 ? swapped(seam) : seam;
    return lids.has(seam[0].face) && !lids.has(seam[1].face) ? swapped(seam) : seam;
  });
}

/** How good a tab could be on a side, and how far it would reach beyond the net without tabs. */
function prospect(
  { table, seams, depthMm, hulls }: Bench,
  hosts: Hosts,
  copy: Copy,
): { quality: number; outreachMm: number } {
  const bevels = bevelsOn(table, seams, hosts, copy);
  const shape = tabShape(copy.a, copy.b, bevels, startDepthMm(copy, bevels, depthMm));
  const outside = sidesOf(hulls[copy.sheet] ?? []).flatMap(([a, b]) =>
    shape.ring.map((corner) => -leftOf(a, b, corner)),
  );
  return { quality: qualityOf(copy, shape.areaMm2, depthMm), outreachMm: Math.max(0, ...outside) };
}

function fitted({ table, sheets, seams, depthMm }: Bench, chosen: readonly Seam[]): Fitted {
  const hosts: Hosts = new Map(
    chosen.flatMap(([host, mate]) => [
      [keyOf(host.face, host.mate), 'tab'] as const,
      [keyOf(mate.face, mate.mate), 'nothing'] as const,
    ]),
  );
  const occupied: Occupied = {
    faces: sheets.map(({ faces }) => faces.map(({ face, ring }) => ({ face, figure: figureOf(ring) }))),
    tabs: sheets.map(() => []),
    landingSides: groupedByFace(chosen.map(([, mate]) => mate)),
  };
  const tabs = chosen.map(([host, mate]): PlacedTab => {
    return { host, mate, ...fitTab(host, mate, bevelsOn(table, seams, hosts, host), depthMm, occupied) };
  });
  return { seams: chosen, tabs, qualities: tabs.map(({ host, shape }) => qualityOf(host, shape.areaMm2, depthMm)) };
}

function groupedByFace(copies: readonly Copy[]): ReadonlyMap<number, readonly Copy[]> {
  const groups = new Map<number, Copy[]>();
  for (const copy of copies) groups.set(copy.face, [...(groups.get(copy.face) ?? []), copy]);
  return groups;
}

/** Its area as a share of what is good enough, at most 1: seven tenths of a tab with room on all sides. */
function qualityOf({ a, b }: Copy, areaMm2: number, depthMm: number): number {
  const deepest = Math.min(depthMm, DEEPEST_SHARE * Math.hypot(b[0] - a[0], b[1] - a[1]));
  const full = tabShape(a, b, { atA: STEEPEST_BEVEL_RAD, atB: STEEPEST_BEVEL_RAD }, deepest);
  return Math.min(1, areaMm2 / (GOOD_ENOUGH * full.areaMm2));
}

const GOOD_ENOUGH = 0.7;

function hullOf({ faces }: Sheet): readonly Vec2[] {
  const corners = faces.flatMap(({ ring }) => ring);
  return convexHull(corners, TOUCH_RELATIVE * Math.max(...corners.map(([x, y]) => Math.hypot(x, y))));
}
