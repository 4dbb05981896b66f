// Area and perimeter of a union of outlines, against three boolean libraries. Discs are true discs for the walk, and
// polygons of 64 corners for the libraries. Builds are spread so that about as many outlines overlap each one at every size.
// polygon-clipping takes minutes for 1 000 outlines, and is left out from there.

import type { Outline } from '@cairnmark/geometry';
import { CONTACT_MM, unionFacts } from '@cairnmark/geometry';
import { Clipper, FillRule } from 'clipper2-ts';
import manifold from 'manifold-3d';
import polygonClipping from 'polygon-clipping';
import type { Dice } from '../reference/dice.ts';
import { diceOf, times } from '../reference/dice.ts';
import { box, disc, ngon } from '../reference/outline-shapes.ts';
import type { Report, Way } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'union of outlines: time of the boundary walk over that of a library';

type Ring = [number, number][];
type Manifold = Awaited<ReturnType<typeof manifold>>;
type Ways = Readonly<Record<string, Way>>;
type Kind = (dice: Dice, width: number) => Outline;

const discs: Kind = ({ between }, width) => disc(between(0, width), between(0, width), between(10, 30));
const polygons: Kind = ({ between, whole }, width) =>
  ngon(between(0, width), between(0, width), between(10, 30), whole(3, 12), between(0, 7));
const boxes: Kind = ({ between }, width) => box(between(0, width), between(0, width), between(15, 50), between(15, 50));
const mixed: Kind = (dice, width) => dice.oneOf([discs, polygons, boxes])(dice, width);

const CONTACT = { contactMm: CONTACT_MM, gapAllowanceMm: CONTACT_MM };
/** mm of ground to each outline, squared: a few overlap each other. */
const SPREAD_MM = 45;

export async function run(report: Report): Promise<void> {
  const library = await manifold();
  library.setup();
  warmUp(library);
  for (const [label, kind] of Object.entries({ discs, polygons, boxes, mixed })) {
    for (const count of [10, 100, 1000, 10_000]) {
      const ways = waysToUnite(buildOf(kind, count), library);
      const { walk = Number.NaN, ...peers } = interleave(ways, count > 1000 ? 3 : 9);
      for (const [peer, ms] of Object.entries(peers)) {
        const target = targetOf(label, count, peer);
        report({ label: `${count} ${label}, of ${peer}`, value: walk / ms, unit: 'x', ...(target && { target }) });
      }
    }
  }
  const { between } = diceOf(300);
  const crowd = times(300, () => ngon(between(0, 0.01), between(0, 0.01), 30, 4, between(0, 1e-3)));
  const { walk } = interleave({ walk: () => unionFacts(crowd, CONTACT) }, 5);
  report({ label: '300 boxes that nearly coincide', value: walk, unit: 'ms', target: 'under 1 000' });
}

/** All kinds in turns before anything is timed: what is compiled for discs alone would be compiled again for boxes. */
function warmUp(library: Manifold): void {
  const warm = [discs, polygons, boxes, mixed].map((kind) => Object.values(waysToUnite(buildOf(kind, 50), library)));
  for (let round = 0; round < 50; round += 1) for (const way of warm.flat()) way();
}

function buildOf(kind: Kind, count: number): readonly Outline[] {
  const dice = diceOf(count);
  return times(count, () => kind(dice, SPREAD_MM * Math.sqrt(count)));
}

function waysToUnite(outlines: readonly Outline[], { CrossSection }: Manifold): Ways {
  const rings = outlines.map(ringOf);
  const paths = rings.map((ring) => ring.map(([x, y]) => ({ x, y })));
  const ways = {
    walk: () => unionFacts(outlines, CONTACT),
    clipper: () => Clipper.unionD(paths, [], FillRule.NonZero, 6).reduce((sum, path) => sum + Clipper.areaD(path), 0),
    manifold: () => {
      const union = CrossSection.ofPolygons(rings, 'NonZero');
      const area = union.area();
      union.delete();
      return area;
    },
  };
  return outlines.length > 100 ? ways : { ...ways, 'polygon-clipping': () => united(rings) };
}

function targetOf(label: string, count: number, peer: string): string | undefined {
  if (peer === 'polygon-clipping' && count === 100) return label === 'discs' ? 'under 0.1' : 'under 1.3';
  return peer === 'manifold' && count >= 1000 ? 'under 1' : undefined;
}

function ringOf(outline: Outline): Ring {
  const round = outline.kind === 'disc' ? ngon(outline.centre[0], outline.centre[1], outline.radiusMm, 64, 0) : outline;
  return round.points.map(([x, y]) => [x, y]);
}

function united(rings: readonly Ring[]): number {
  const [first, ...others] = rings.map((ring) => [ring]);
  return first === undefined ? 0 : polygonClipping.union(first, ...others).length;
}
