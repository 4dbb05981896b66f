// Pieces that are put on the table, not dropped: under a lintel, beside others, or refused. mm.

import { describe, expect, it } from 'vitest';
import { box, cube, cylinder, put, solidsOf, sphere, stackOf } from '../../../../tests/reference/stacked-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { buildStack } from './build-stack.ts';
import type { LaidPiece, StackIssue } from './types.ts';

const solids = solidsOf({
  pillar: cube(50),
  nearly: box(50, 50, 49.98),
  proud: box(50, 50, 50.04),
  tall: box(50, 50, 60),
  lintel: box(200, 50, 20),
  stub: box(30, 30, 30),
  ball: sphere(40),
  drum: cylinder(25, 30),
  wedge: { solid: 'rectangular-pyramid', sizes: { length: 80, width: 80, height: 40 } },
});
const onTable = { on: 'table' } as const;
const BRIDGE = [put('pillar', -70, 0), put('pillar', 70, 0), put('lintel', 0, 0)];

function issuesOf(pieces: readonly LaidPiece[]): readonly StackIssue[] {
  const built = buildStack(pieces, solids, 0);
  return built.ok ? [] : built.issues;
}

describe('under a lintel', () => {
  it('a low piece stands free', () => {
    const stack = stackOf([...BRIDGE, put('stub', 0, 0, onTable)], solids);
    expect(stack.pieces[3]?.bottomMm).toBe(0);
    expect(stack.supports.filter(({ upper, lower }) => upper === 3 || lower === 3)).toEqual([
      { upper: 3, lower: 'table', normal: [0, 0, 1], closedMm: 0 },
    ]);
  });

  it.each([
    ['pillar', 0],
    ['nearly', 0.02],
    ['proud', 0],
  ])('a piece that just fits (%s) helps to carry it', (kind, closedMm) => {
    const stack = stackOf([...BRIDGE, put(kind, 0, 0, onTable)], solids);
    const [carries] = stack.supports.filter(({ lower }) => lower === 3);
    expect(carries).toMatchObject({ upper: 2, normal: [0, 0, 1] });
    expectNear(carries?.closedMm ?? 1, closedMm, { absolute: 1e-11 });
  });

  it('a piece too tall is refused by the depth that it would press in', () => {
    const [issue] = issuesOf([...BRIDGE, put('tall', 0, 0, onTable)]);
    expect(issue).toMatchObject({ code: 'overlaps', path: ['pieces', 3, 'on'], details: { other: 2 } });
    expectNear(Number(issue?.details['depthMm']), 10, { absolute: 1e-11 });
  });

  it('of several pieces in the way the one that it runs into deepest is told, whichever was laid first', () => {
    // The stub spans -15 to 15, the pillars -62 to -12 and 8 to 58: 3 mm of it are in the left one, 7 in the right.
    const [left, right] = [put('pillar', -37, 0, onTable), put('pillar', 33, 0, onTable)];
    for (const pillars of [
      [left, right],
      [right, left],
    ]) {
      const [issue] = issuesOf([...pillars, put('stub', 0, 0, onTable)]);
      expectNear(Number(issue?.details['depthMm']), 7, { absolute: 1e-11 });
      expect(pillars[Number(issue?.details['other'])]).toBe(right);
    }
  });

  it('without "on" it lands on top', () => {
    expect(stackOf([...BRIDGE, put('stub', 0, 0)], solids).pieces[3]?.bottomMm).toBe(70);
  });

  it('a later piece lands on a lintel that was put on the table', () => {
    const stack = stackOf([put('lintel', 0, 0, onTable), put('stub', 40, 0)], solids);
    expect(stack.pieces[1]?.bottomMm).toBe(20);
  });
});

describe('beside other pieces', () => {
  it.each<[string, readonly LaidPiece[], number | null]>([
    ['flush', [put('pillar', 0, 0), put('pillar', 50, 0, onTable)], null],
    ['pressed in by less than a contact', [put('pillar', 0, 0), put('pillar', 49.96, 0, onTable)], null],
    ['pressed in sideways', [put('pillar', 0, 0), put('pillar', 47, 0, onTable)], 3],
    ['pressed in from above, the lower way out', [put('lintel', 0, 0), put('pillar', 60, 10, onTable)], 20],
    ['drum against pillar', [put('drum', 0, 0), put('pillar', 48, 0, onTable)], 2],
    // The centre of the ball is 40 up; the tile's upper edge is 30 up and 36 off: 40 - sqrt(36^2 + 10^2) deep along the line.
    ['ball over an edge', [put('stub', 0, 0), put('ball', 51, 0, { resting: 'round', on: 'table' })], 2.637],
    ['ball clear of an edge', [put('stub', 0, 0), put('ball', 54, 0, { resting: 'round', on: 'table' })], null],
  ])('%s', (_, pieces, depthMm) => {
    const [issue] = issuesOf(pieces);
    if (depthMm === null) {
      expect(issue).toBeUndefined();
      return;
    }
    expect(issue).toMatchObject({ code: 'overlaps', path: ['pieces', 1, 'on'], details: { other: 0 } });
    // The depth told is that of the shadows or along the contact normal of a drop, whichever is least: for a round
    // contact a little more than the true depth.
    expect(Number(issue?.details['depthMm'])).toBeGreaterThanOrEqual(depthMm - 1e-9);
    expect(Number(issue?.details['depthMm'])).toBeLessThanOrEqual(depthMm * 1.25);
  });

  it('every piece in the way is told at once, and nothing is built', () => {
    const pieces = [
      put('pillar', 0, 0),
      put('pillar', 10, 0, onTable),
      put('pillar', 300, 0),
      put('stub', 300, 9, onTable),
    ];
    expect(issuesOf(pieces).map(({ path }) => path)).toEqual([
      ['pieces', 1, 'on'],
      ['pieces', 3, 'on'],
    ]);
  });
});
