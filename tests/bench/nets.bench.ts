// What a net takes: those of usual pieces beside the most folded ones, and the largest size for a page.

import type { Solid } from '@cairnmark/geometry';
import { largestThatFits, makeNet } from '@cairnmark/nets';
import { solidOf } from '../reference/solid-cases.ts';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'nets';

const TABS = { tabDepthMm: 8 };
const A4 = { paper: 'A4', widthMm: 194, heightMm: 267 };
const CUBE = { solid: 'cube', sizes: { edge: 50 } } as const;
const DODECAHEDRON = { solid: 'dodecahedron', sizes: { edge: 30 } } as const;

export async function run(report: Report): Promise<void> {
  const solids: Readonly<Record<string, Solid>> = {
    cube: solidOf(CUBE),
    dodecahedron: solidOf(DODECAHEDRON),
    icosahedron: solidOf({ solid: 'icosahedron', sizes: { edge: 40 } }),
    cone: solidOf({ solid: 'cone', sizes: { radius: 30, height: 40 } }),
    'antiprism with twelve sides': solidOf({ solid: 'antiprism', sizes: { sides: 12, edge: 20 } }),
  };
  const nets = Object.entries(solids).map(([label, solid]) => [label, () => makeNet(solid, TABS)] as const);
  for (const [label, ms] of Object.entries(interleave(Object.fromEntries(nets), 9))) {
    report({ label: `net: ${label}`, value: ms, unit: 'ms', target: 'under 100' });
  }
  const pages = {
    cube: () => largestThatFits(CUBE, A4, TABS),
    dodecahedron: () => largestThatFits(DODECAHEDRON, A4, TABS),
  };
  for (const [label, ms] of Object.entries(interleave(pages, 5))) {
    report({ label: `largest on a page: ${label}`, value: ms, unit: 'ms', target: 'under 1000' });
  }
}
