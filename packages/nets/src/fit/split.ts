// A net that is too large for a page, in several parts: parted at folds, never through a face, with one more tab for every
// fold that is cut. As few parts as can be of the net as it is laid out, where all ways can be tried, and of ways with as few
// the evenest. mm.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import { netOf } from '../make-net.ts';
import type { Net, NetIssue } from '../net.ts';
import { flatParts } from '../tabs/flat-parts.ts';
import { scaleOn } from '../unfold/choose.ts';
import type { FaceTable } from '../unfold/faces.ts';
import { faceTable } from '../unfold/faces.ts';
import type { Joint, Sheet } from '../unfold/unfold.ts';
import { unfold } from '../unfold/unfold.ts';
import { choices, cutAt } from './cuts.ts';
import { fits, netFits } from './fits.ts';
import type { Frame } from './frame.ts';

/**
 * The net in parts that fit `frame`, as it is when it fits already. Refused with `face-too-large` when one face with its
 * tabs is larger than the page, as the wall of a round solid may be.
 */
export function splitNet(net: Net, frame: Frame): Result<Net, NetIssue> {
  if (netFits(net, frame)) return success(net);
  const bench = benchOf(net, frame);
  const parted = bench === null ? null : (fewest(bench) ?? oneByOne(bench));
  if (parted !== null) return success(parted);
  return failure([{ code: 'face-too-large', path: [], details: { paper: frame.paper, solid: net.solid.id } }]);
}

interface Bench {
  readonly net: Net;
  readonly frame: Frame;
  readonly table: FaceTable;
  /** All parts of the net, whole. */
  readonly whole: readonly Sheet[];
  readonly joints: readonly Joint[];
}

/** Null when no split can help: no fold between faces, or a face that does not fit even without tabs. */
function benchOf(net: Net, frame: Frame): Bench | null {
  const table = faceTable(net.solid);
  const whole = net.parts.map((part): Sheet => {
    const joints = part.folds.flatMap((fold): Joint[] => (fold.kind === 'face' ? [fold.between] : []));
    return unfold(table, part.faces[0]?.face ?? -1, { joints, lids: net.lids });
  });
  const joints = whole.flatMap((sheet) => sheet.joints);
  const singles = whole.flatMap((sheet) => cutAt(sheet, sheet.joints));
  const allFit = singles.every((sheet) => scaleOn(sheet, frame.widthMm, frame.heightMm) >= 1);
  return joints.length > 0 && allFit ? { net, frame, table, whole, joints } : null;
}

/** The fewest cuts of which all ways can be tried; null when there are too many ways before one fits. */
function fewest(bench: Bench): Net | null {
  const room = roomOf(bench);
  for (let cuts = 1; cuts <= bench.joints.length; cuts += 1) {
    const ways = choices(bench.joints, cuts, MOST_WAYS);
    if (ways === null) return null;
    const sheets = ways
      .map((way) => bench.whole.flatMap((sheet) => cutAt(sheet, way)))
      .filter((parts) => parts.every((sheet) => room(sheet) >= 1))
      .sort((a, b) => mostFaces(a) - mostFaces(b));
    for (const parts of sheets.slice(0, MOST_TRIES)) {
      const net = withTabs(bench, parts);
      if (netFits(net, bench.frame)) return net;
    }
  }
  return null;
}

/** Ways to cut so many folds that are looked through without tabs, and those of them that get their tabs. */
const MOST_WAYS = 2500;
const MOST_TRIES = 12;

/** Cut after cut through a part that does not fit, each where its worse half has most room. */
function oneByOne(bench: Bench): Net | null {
  const room = roomOf(bench);
  let parts: readonly Sheet[] = bench.whole;
  for (;;) {
    const net = withTabs(bench, parts);
    const bad = net.parts.findIndex((part) => fits(part, bench.frame) === null);
    const sheet = parts[bad];
    if (sheet === undefined) return net;
    const halves = sheet.joints.map((joint) => cutAt(sheet, [joint]));
    const worse = (pair: readonly Sheet[]): number => Math.min(...pair.map(room));
    const [best] = halves.sort((a, b) => worse(b) - worse(a));
    if (best === undefined) return null;
    parts = parts.flatMap((one) => (one === sheet ? best : [one]));
  }
}

function withTabs({ net, table }: Bench, parts: readonly Sheet[]): Net {
  return netOf(net, flatParts(table, parts, net.tabDepthMm), net.lids);
}

/** How much a sheet without tabs could grow on the page; the same sheet comes up many times. */
function roomOf({ frame }: Bench): (sheet: Sheet) => number {
  const known = new Map<string, number>();
  return (sheet) => {
    const key = sheet.faces.map(({ face }) => face).join(' ');
    const room = known.get(key) ?? scaleOn(sheet, frame.widthMm, frame.heightMm);
    known.set(key, room);
    return room;
  };
}

const mostFaces = (parts: readonly Sheet[]): number => Math.max(...parts.map(({ faces }) => faces.length));
