import { describe, expect, it } from 'vitest';
import { cube, cylinder, put, solidsOf } from '../../../../tests/reference/stacked-builds.ts';
import { buildStack } from './build-stack.ts';
import { FURTHEST_MM, MOST_PIECES } from './check-layout.ts';
import type { LaidPiece, StackIssue } from './types.ts';

const solids = solidsOf({ brick: cube(40), drum: cylinder(20, 30) });

function issuesOf(pieces: readonly LaidPiece[]): readonly StackIssue[] {
  const built = buildStack(pieces, solids, 0);
  return built.ok ? [] : built.issues;
}

describe('a layout that cannot be built', () => {
  it('is refused with every fault at once, each at its place', () => {
    const pieces = [
      put('brick', 0, 0),
      put('plank', Number.NaN, 3),
      put('drum', 10_000.5, -20_000, { resting: 'edge' }),
      put('brick', 5, 7, { turnRad: Number.POSITIVE_INFINITY }),
    ];
    expect(issuesOf(pieces)).toEqual([
      { code: 'position-not-finite', path: ['pieces', 1, 'xMm'], details: { value: 'NaN' } },
      { code: 'kind-unknown', path: ['pieces', 1, 'kind'], details: { kind: 'plank' } },
      { code: 'position-too-far', path: ['pieces', 2, 'xMm'], details: { valueMm: 10_000.5, limitMm: FURTHEST_MM } },
      { code: 'position-too-far', path: ['pieces', 2, 'yMm'], details: { valueMm: -20_000, limitMm: FURTHEST_MM } },
      {
        code: 'resting-unknown',
        path: ['pieces', 2, 'resting'],
        details: { kind: 'drum', resting: 'edge', known: 'base, side' },
      },
      { code: 'position-not-finite', path: ['pieces', 3, 'turnRad'], details: { value: 'Infinity' } },
    ]);
  });

  it('weighs nothing, or balances outside itself', () => {
    const weighed = (massG: number, centreMm?: number) =>
      put('drum', 0, 0, { weighed: { massG, ...(centreMm === undefined ? {} : { centreMm }) } });
    expect(issuesOf([weighed(7), weighed(3, 0), weighed(3, 30), weighed(-3), weighed(5, 30.5)])).toEqual([
      { code: 'mass-not-positive', path: ['pieces', 3, 'weighed', 'massG'], details: { massG: -3 } },
      {
        code: 'centre-outside-piece',
        path: ['pieces', 4, 'weighed', 'centreMm'],
        details: { centreMm: 30.5, leastMm: 0, mostMm: 30 },
      },
    ]);
    expect(issuesOf([weighed(Number.NaN), weighed(Number.POSITIVE_INFINITY)]).map(({ path }) => path[1])).toEqual([
      0, 1,
    ]);
  });

  it('the furthest place and any turn are allowed', () => {
    expect(issuesOf([put('brick', FURTHEST_MM, -FURTHEST_MM, { turnRad: 1e6 })])).toEqual([]);
  });

  it('too many pieces', () => {
    const row = Array.from({ length: MOST_PIECES + 1 }, (_, k) => put('brick', k % 100, 0));
    expect(issuesOf(row)).toEqual([
      { code: 'too-many-pieces', path: ['pieces'], details: { count: 5001, limit: 5000 } },
    ]);
  });

  it('no pieces at all make an empty stack', () => {
    expect(buildStack([], solids, 0)).toEqual({ ok: true, value: { pieces: [], supports: [], faceContacts: [] } });
  });
});
