import { faultsOf } from '@cairnmark/formats';
import { makeSolid, rulerOf } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { addKind } from '../../store/kit-changes.ts';
import { challengeOf, unplayed } from '../../store/kit-for-tests.ts';
import { newKind, SOLIDS, usualSolid } from './usual-sizes.ts';

it.each(SOLIDS)('a %s to begin with is a piece for a hand, in steps of the ruler', (solid) => {
  for (const [ruler, stepMm] of [
    [rulerOf('mm'), 5],
    [rulerOf('quarter-inch'), 6.35],
  ] as const) {
    const spec = usualSolid(solid, ruler);
    const made = makeSolid(spec);
    expect(made.ok).toBe(true);
    const lengths = Object.entries(spec.sizes).filter(([name]) => name !== 'sides');
    for (const [name, lengthMm] of lengths)
      expect(Math.abs(lengthMm / stepMm - Math.round(lengthMm / stepMm)), name).toBeLessThan(1e-9);
    const heightMm = made.ok ? (made.value.restings[0]?.heightMm ?? 0) : 0;
    // Nothing lower than a matchbox, nothing that would not fit on a sheet of paper.
    expect(heightMm).toBeGreaterThanOrEqual(25);
    expect(heightMm).toBeLessThanOrEqual(110);
  }
});

it('all of them can be added, some twice, and the class is kept', () => {
  let record = unplayed();
  for (const solid of [...SOLIDS, ...SOLIDS]) {
    const kind = newKind(record, challengeOf(record).kit, usualSolid(solid, rulerOf('mm')), 'Cube');
    record = addKind('tall-light', kind)(record);
  }
  expect(faultsOf('class', record)).toEqual([]);
  const names = challengeOf(record).kit.kinds.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
});

it('paper makes no ball', () => {
  const record = unplayed();
  const made = (solid: 'sphere' | 'cone') =>
    newKind(record, challengeOf(record).kit, usualSolid(solid, rulerOf('mm')), solid);
  expect(made('sphere').material.kind).toBe('full');
  expect(made('cone').material).toEqual(challengeOf(record).kit.kinds[0]?.material);
});
