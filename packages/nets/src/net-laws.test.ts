// What holds for the net of every solid, whatever its sizes. mm, mm2.

import type { FlatFace, Solid, SolidSpec, Vec2 } from '@cairnmark/geometry';
import { CATALOGUE, CONTACT_MM, signedAreaMm2, unionFacts } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import { foldBackErrorMm, tabCentres } from '../../../tests/reference/folded-nets.ts';
import { made, onEverySolid, solidOf } from '../../../tests/reference/solid-cases.ts';
import { expectNear, expectPointNear } from '../../../tests/tools/within.ts';
import { splitNet } from './fit/split.ts';
import { makeNet, netOf as netFrom } from './make-net.ts';
import type { Net } from './net.ts';
import { flattenPath, pathAreaMm2 } from './path/measure.ts';
import type { Path } from './path/path.ts';
import { straightPath } from './path/path.ts';
import { placeOn } from './plane/place-on.ts';
import { flatParts } from './tabs/flat-parts.ts';
import { RECIPES } from './trees/catalogue.ts';
import { treesFor } from './trees/trees-for.ts';
import { sheetsOf } from './unfold/choose.ts';
import { faceTable } from './unfold/faces.ts';

const SHARE = { full: 100, part: 2 };
const TAB_MM = 8;
/** Cubics for arcs are off by 4.3e-6 of the radius, areas by as much. */
const ROUND = { relative: 1e-5 };
const EXACT = { relative: 1e-12 };
/** mm. Curves are taken as straight pieces that stay this near. */
const FLAT_MM = 0.001;
/** mm2. Figures that touch along a line of 200 mm, and are 1e-9 mm off it. */
const TOUCH_MM2 = 1e-6;

onEverySolid('the net of every solid', SHARE, (solid) => {
  const net = netOf(solid, 'closed');
  if (net !== null) laws(net);
});

describe('the net of every solid that can be open at its base', () => {
  test.each(Object.values(CATALOGUE))('$id', (definition) => {
    const solid = made(definition, definition.example);
    const net = netOf(solid, 'open');
    if (net === null) return;
    expect(net.base).toBe(solid.centroids.openShell === null ? 'closed' : 'open');
    laws(net);
  });
});

describe('the net of every solid in parts, or by a less familiar tree', () => {
  const flatFaced = Object.values(CATALOGUE).filter(({ id }) => RECIPES[id].kind === 'faces');

  test.each(flatFaced)('$id', (definition) => {
    const solid = made(definition, definition.example);
    const net = netOf(solid, 'closed')!;
    // A page on which the whole net just does not fit.
    const { widthMm, heightMm } = placedOn(net);
    const frame = { paper: 'test', widthMm: 0.75 * widthMm, heightMm: 0.75 * heightMm };
    const split = splitNet(net, frame);
    if (!split.ok) throw new Error(JSON.stringify(split.issues));
    expect(split.value.parts.length).toBeGreaterThan(1);
    laws(split.value);
    const recipe = RECIPES[definition.id];
    if (recipe.kind !== 'faces') return;
    const table = faceTable(solid);
    for (const sheet of sheetsOf(table, treesFor(recipe, table, 'closed')).others) {
      laws(netFrom({ solid, tabDepthMm: TAB_MM, base: 'closed' }, flatParts(table, [sheet], TAB_MM), sheet.lids));
    }
  });
});

// Each of these came out with tabs over each other, over faces or cut to nothing, once or with one check left out.
describe('shapes that are hard to give tabs', () => {
  test.each<[string, SolidSpec]>([
    [
      'a fan closed nearly to a full turn',
      { solid: 'regular-frustum', sizes: { sides: 7, edge: 147.5, topEdge: 3, height: 3 } },
    ],
    [
      'two tabs behind a narrow side',
      { solid: 'rectangular-frustum', sizes: { length: 4.875, width: 3, topLength: 3, height: 14.625 } },
    ],
    [
      'two tabs behind a side that ends in a needle',
      { solid: 'rectangular-frustum', sizes: { length: 115.6, width: 57.2, topLength: 1.24, height: 427.4 } },
    ],
    [
      'a row of sides that bends back on its end',
      { solid: 'regular-frustum', sizes: { sides: 5, edge: 44.08, topEdge: 6.95, height: 17.8 } },
    ],
    [
      'a row of sides whose tabs look at each other',
      { solid: 'regular-frustum', sizes: { sides: 7, edge: 60.12, topEdge: 23.54, height: 40.3 } },
    ],
    ['a mast', { solid: 'regular-frustum', sizes: { sides: 3, edge: 11.48, topEdge: 6.136, height: 144.6 } }],
    [
      'a low frustum with a tiny top',
      { solid: 'regular-frustum', sizes: { sides: 11, edge: 240.1, topEdge: 1.83, height: 3.2 } },
    ],
  ])('%s', (_, spec) => {
    const net = netOf(solidOf(spec), 'closed');
    if (net !== null) laws(net);
    expect(Math.min(...net!.parts.flatMap(({ tabs }) => tabs.map(({ depthMm }) => depthMm)))).toBeGreaterThan(0.1);
  });
});

/** The page that is as large as the net, of the shape of A4. */
function placedOn({ parts }: Net): { readonly widthMm: number; readonly heightMm: number } {
  const { scale } = placeOn(
    parts.flatMap(({ cut }) => flattenPath(cut, FLAT_MM)),
    210,
    297,
  );
  return { widthMm: 210 / scale, heightMm: 297 / scale };
}

/** null for a ball, which has none. */
function netOf(solid: Solid, base: 'closed' | 'open'): Net | null {
  const net = makeNet(solid, { tabDepthMm: TAB_MM, base });
  if (net.ok) {
    if (solid.curvedSurfaces.length === 0) expect(net.value.parts).toHaveLength(1);
    return net.value;
  }
  expect(net.issues).toEqual([{ code: 'no-net', path: [], details: { solid: solid.id } }]);
  expect(solid.curvedSurfaces.map((surface) => surface.net)).toEqual(['none']);
  return null;
}

function laws(net: Net): void {
  const { solid } = net;
  const near = solid.curvedSurfaces.length > 0 ? ROUND : EXACT;
  const leftOutMm2 = net.base === 'open' ? areaOf(solid.flatFaces[0]!) : 0;
  expectNear(net.paperMm2 + leftOutMm2, solid.surfaceMm2, EXACT, 'paper against surface');
  for (const { cut, faces, tabs } of net.parts) {
    const inside = [...faces, ...tabs].reduce((sum, { outline }) => sum + pathAreaMm2(outline), 0);
    expectNear(pathAreaMm2(cut), inside, near, 'inside the cut against faces and tabs');
    const rings = [...faces, ...tabs].map(({ outline }) => flattenPath(outline, FLAT_MM));
    expectNear(unionArea(rings), inside, offBy(cut), 'nothing lies over anything');
    for (const { outline, areaMm2 } of faces) expectNear(pathAreaMm2(outline), areaMm2, near, 'face');
  }
  landsWell(net);
  if (solid.curvedSurfaces.length === 0) flatLaws(net);
}

function flatLaws(net: Net): void {
  const { parts, solid } = net;
  const [tabs, folds] = [parts.flatMap((part) => part.tabs), parts.flatMap((part) => part.folds)];
  const { flatFaces, straightEdges, vertices } = solid.counts;
  const open = net.base === 'open' ? sidesOf(solid.flatFaces[0]!) : 0;
  const laid = net.base === 'open' ? flatFaces - 1 : flatFaces;
  // Closed and in one part: vertices less one, by Euler. One more for every part more.
  const more = parts.length - 1;
  expect(tabs, 'tabs').toHaveLength(more + (open === 0 ? vertices - 1 : straightEdges - open - (laid - 1)));
  expect(folds, 'folds').toHaveLength(laid - 1 - more + tabs.length);
  const edges = [
    ...tabs.map(({ host, mate }) => edgeOf(host, mate)),
    ...folds.flatMap((fold) => (fold.kind === 'face' ? [edgeOf(...fold.between)] : [])),
  ];
  expect(new Set(edges).size, 'each edge is folded or has one tab').toBe(straightEdges - open);
  expect(edges).toHaveLength(straightEdges - open);
  expect(foldBackErrorMm(net), 'folded back').toBeLessThan(1e-9);
  for (const { tab, centre } of tabCentres(net)) expectPointNear(tab.centroid, centre, 1e-9, 'tab');
}

const sidesOf = (face: FlatFace): number => (face.kind === 'polygon' ? face.corners.length : 0);

/** Of a face that lies level. */
const areaOf = (face: FlatFace): number =>
  face.kind === 'disc' ? Math.PI * face.radiusMm ** 2 : Math.abs(signedAreaMm2(face.corners.map(([x, y]) => [x, y])));

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
