// Builds that the easy rule (overall centre of mass over the hull of what touches the table) judges wrongly. Lump, hinge
// and distance are worked out by hand beside each build. Full pieces of one density; mm.

import { expect, it } from 'vitest';
import { FULL, judged, question } from '../../../../tests/reference/judged-builds.ts';
import { box, put } from '../../../../tests/reference/stacked-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Stability } from './stability.ts';

const SPECS = { pillar: box(30, 30, 70), slab: box(150, 30, 10), block: box(50, 30, 50), wall: box(30, 30, 70) };
const MM = { absolute: 1e-6 };
const judge = (pieces: Parameters<typeof question>[0]): Stability => judged(question(pieces, SPECS, FULL, 0.5));

function expectTopples(answer: Stability, pieces: readonly number[], on: number, edgeX: number, pastMm: number): void {
  expect(answer.stands).toBe(false);
  expect(answer.first).toHaveLength(1);
  const [{ hinge, ...going }] = answer.first as [Stability['first'][number]];
  expect(going).toEqual({ pieces, on });
  expectNear(hinge!.ends[0][0], edgeX, MM, 'hinge');
  expectNear(hinge!.ends[1][0], edgeX, MM, 'hinge');
  expectNear(hinge!.pastMm, pastMm, MM, 'past');
}

it('a gate whose lintel hangs out: the lintel alone goes, 20 past the right pillar', () => {
  // Pillars from -65 to -35 and 35 to 65; slab from -5 to 145, middle 70: past 65 by 5. Overall centre at
  // (63000 (-50 + 50) + 45000 x 70) / 171000 = 18.4, well inside -65 to 65.
  const answer = judge([put('pillar', -50, 0), put('pillar', 50, 0), put('slab', 70, 0)]);
  expectTopples(answer, [2], 1, 65, 5);
  expect(answer.mend).toEqual({ piece: 2, moved: [2], side: 'left', byMm: 5 });
});

it('a bridge with a block on its end: slab and block go together over the right pillar', () => {
  // Slab from -75 to 75 on pillars at -50 and 20 (to 35); block at 70, from 45 on, safe on the slab's end at 75.
  // Slab 45000 at 0, block 75000 at 70: together 43.75, past 35 by 8.75. Overall 13.7, between the pillars.
  const answer = judge([put('pillar', -50, 0), put('pillar', 20, 0), put('slab', 0, 0), put('block', 70, 0)]);
  expectTopples(answer, [2, 3], 1, 35, 8.75);
  // The block alone would have to go back by 14, slab and block together by 8.75.
  expect(answer.mend).toMatchObject({ side: 'left', byMm: 9 });
});

it('a long fort: the far lintel falls although four walls stand firm', () => {
  // Walls at -200, -120, 0 and 100. A lintel on the first two (fine); one at 175 on the last: from 100 to 250, on 100 to
  // 115 alone, middle 175 past 115 by 60.
  const answer = judge([
    put('wall', -200, 0),
    put('wall', -120, 0),
    put('wall', 0, 0),
    put('wall', 100, 0),
    put('slab', -160, 0),
    put('slab', 175, 0),
  ]);
  expectTopples(answer, [5], 3, 115, 60);
});

it('stands although its centre of mass lies over no support: a slab across two pillars', () => {
  // The centre is over the gap between the pillars. Tilted to the right it turns over the pillar's foot or lintel edge.
  const answer = judge([put('pillar', -60, 0), put('pillar', 60, 0), put('slab', 0, 0)]);
  expect(answer).toMatchObject({ stands: true, method: 'least-squares-and-programmes', mend: null });
  // Across the gate, over the long sides of 15 from the middle: centre at (2 x 63000 x 35 + 45000 x 75) / 171000 high.
  expectNear(answer.tipsAt!.push, 15 / ((126000 * 35 + 45000 * 75) / 171000), { absolute: 1e-7 });
  expectNear(Math.abs(answer.tipsAt!.direction[1]), 1, { absolute: 1e-6 });
});
