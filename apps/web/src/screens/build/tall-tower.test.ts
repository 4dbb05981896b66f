import type { Report } from '@cairnmark/engine';
import type { Fact } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { isTallTower, TALL_TOWER_MM } from './tall-tower.ts';

type Height = Report['facts'][number];

const drawn = (value: number): Fact => ({ id: 'height', unit: 'mm', status: 'measured', value, tolerance: 0 }) as Fact;
const height = (predicted: Fact | null, value: number | null): Pick<Report, 'facts'> => ({
  facts: [
    { id: 'height', unit: 'mm', value, predicted, tolerance: 0, errors: {}, source: null, observed: null } as Height,
  ],
});

it.each([
  ['nothing worked out yet', null, false],
  ['no height', { facts: [] }, false],
  ['a metre, drawn', height(drawn(TALL_TOWER_MM), TALL_TOWER_MM), false],
  ['more than a metre, drawn', height(drawn(TALL_TOWER_MM + 1), null), true],
  ['more than a metre by the ruler, nothing drawn', height(null, TALL_TOWER_MM + 1), true],
  ['drawn taller than the ruler read', height(drawn(TALL_TOWER_MM + 50), TALL_TOWER_MM - 50), true],
] as const)('the caution for tall towers: %s', (_, report, shown) => {
  expect(isTallTower(report)).toBe(shown);
});
