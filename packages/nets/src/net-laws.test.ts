// What holds for the net of every solid, whatever its sizes. mm, mm2.

import type { Solid, Vec2 } from '@cairnmark/geometry';
import { CONTACT_MM, unionFacts } from '@cairnmark/geometry';
import { expect } from 'vitest';
import { foldBackErrorMm, tabCentres } from '../../../tests/reference/folded-nets.ts';
import { onEverySolid } from '../../../tests/reference/solid-cases.ts';
import { expectNear, expectPointNear } from '../../../tests/tools/within.ts';
import { makeNet } from './make-net.ts';
import type { Net } from './net.ts';
import { flattenPath, pathAreaMm2 } from './path/measure.ts';
import type { Path } from './path/path.ts';
import { straightPath } from './path/path.ts';

const SHARE = { full: 100, part: 2 };
/** Cubics for arcs are off by 4.3e-6 of the radius, areas by as much. */
const ROUND = { relative: 1e-5 };
const EXACT = { relative: 1e-12 };
/** mm. Curves are taken as straight pieces that stay this near. */
const FLAT_MM = 0.001;
/** mm2. Figures that touch along a line of 200 mm, and are 1e-9 mm off it. */
const TOUCH_MM2 = 1e-6;

onEverySolid('the net of every solid', SHARE, (solid) => {
  const net = netOf(solid);
  if (net === null) return;
  const near = solid.curvedSurfaces.length > 0 ? ROUND : EXACT;
  expectNear(net.paperMm2, solid.surfaceMm2, EXACT, 'paper against surface');
  for (const { cut, faces, tabs } of net.parts) {
    const inside = [...faces, ...tabs].reduce((sum, { outline }) => sum + pathAreaMm2(outline), 0);
    expectNear(pathAreaMm2(cut), inside, near, 'inside the cut against faces and tabs');
    const rings = [...faces, ...tabs].map(({ outline }) => flattenPath(outline, FLAT_MM));
    expectNear(unionArea(rings), inside, offBy(cut), 'nothing lies over anything');
    for (const { outline, areaMm2 } of faces) expectNear(pathAreaMm2(outline), areaMm2, near, 'face');
  }
  landsWell(net);
  if (solid.curvedSurfaces.length === 0) flatLaws(net);
});

/** null for a ball, which has none. */
function netOf(solid: Solid): Net | null {
  const made = makeNet(solid, { tabDepthMm: 8 });
  if (made.ok) return made.value;
  expect(made.issues).toEqual([{ code: 'no-net', path: [], details: { solid: solid.id } }]);
  expect(solid.curvedSurfaces.map(({ net }) => net)).toEqual(['none']);
  return null;
}

function flatLaws({ parts, solid, ...net }: Net): void {
  const [part] = parts;
  const { flatFaces, straightEdges, vertices } = solid.counts;
  expect(parts).toHaveLength(1);
  expect(part!.tabs, 'tabs').toHaveLength(vertices - 1);
  expect(part!.folds, 'folds').toHaveLength(flatFaces - 1 + part!.tabs.length);
  const edges = [
    ...part!.tabs.map(({ host, mate }) => edgeOf(host, mate)),
    ...part!.folds.flatMap((fold) => (fold.kind === 'face' ? [edgeOf(...fold.between)] : [])),
  ];
  expect(new Set(edges).size, 'each edge is folded or has one tab').toBe(straightEdges);
  expect(edges).toHaveLength(straightEdges);
  const whole = { ...net, parts, solid };
  expect(foldBackErrorMm(whole), 'folded back').toBeLessThan(1e-9);
  for (const { tab, centre } of tabCentres(whole)) expectPointNear(tab.centroid, centre, 1e-9, 'tab');
}

const edgeOf = (a: number, b: number): string => [Math.min(a, b), Math.max(a, b)].join(' ');

/** Glued tabs lie on their mate, and on no other tab. */
function landsWell({ parts }: Net): void {
  const tabs = parts.flatMap((part) => part.tabs);
  for (const { face, outline, areaMm2 } of parts.flatMap(({ faces }) => faces)) {
    const landings = tabs.filter(({ mate }) => mate === face).map(({ landing }) => landing);
    if (landings.length === 0) continue;
    const apart = landings.reduce((sum, ring) => sum + pathAreaMm2(straightPath(ring, true)), 0);
    expectNear(unionArea(landings), apart, { absolute: TOUCH_MM2 }, 'landings apart');
    const flat = flattenPath(outline, FLAT_MM);
    expectNear(unionArea([flat, ...landings]), areaMm2, offBy(outline), `landings inside face ${face}`);
  }
}

/** What straight pieces in place of curves can do to an area, all along the line. */
function offBy(path: Path): { readonly absolute: number } {
  const ring = flattenPath(path, FLAT_MM);
  const before = (k: number): Vec2 => ring.at(k - 1)!;
  const lengthMm = ring.reduce((sum, [x, y], k) => sum + Math.hypot(x - before(k)[0], y - before(k)[1]), 0);
  return { absolute: TOUCH_MM2 + FLAT_MM * lengthMm };
}

const unionArea = (rings: readonly (readonly Vec2[])[]): number =>
  unionFacts(
    rings.map((points) => ({ kind: 'polygon', points })),
    { contactMm: CONTACT_MM, gapAllowanceMm: 0 },
  ).areaMm2;
