// Outlines on which boolean libraries failed, cut down to the smallest case (see tests/corpus/README.md): the walk and the
// drawn union against the exact arrangement.

import { expect, it } from 'vitest';
import corpus from '../../../../tests/corpus/outlines-failing.json' with { type: 'json' };
import { exactUnion } from '../../../../tests/reference/exact-union.ts';
import { polygon, snapped } from '../../../../tests/reference/outline-shapes.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { drawnUnion } from './drawn-union.ts';
import { unionFacts } from './union-facts.ts';

const GRID = 2 ** -20;
/** mm: nearer boundaries are drawn as one. */
const WELD_MM = 1e-3;

it('holds the eight', () => {
  expect(Object.keys(corpus).length).toBe(8);
});

it.each(Object.entries(corpus))('%s', (_, { rings }) => {
  const raw = rings.map((ring) => polygon(ring.map(([x = 0, y = 0]): Vec2 => [x, y])));
  const outlines = snapped(raw, GRID);
  const expected = exactUnion(
    outlines.map((one) => (one.kind === 'polygon' ? one.points : [])),
    GRID,
  );
  const facts = unionFacts(outlines, { contactMm: 0, gapAllowanceMm: 0 });
  expectNear(facts.areaMm2, expected.areaMm2, { relative: 1e-9 }, 'area');
  expectNear(facts.outerPerimeterMm + facts.innerPerimeterMm, expected.perimeterMm, { relative: 1e-9 }, 'perimeter');
  expectNear(
    unionFacts(raw, { contactMm: 0, gapAllowanceMm: 0 }).areaMm2,
    expected.areaMm2,
    { relative: 1e-6 },
    'raw area',
  );
  expect(drawnUnion(raw, WELD_MM).ok).toBe(true);
});
