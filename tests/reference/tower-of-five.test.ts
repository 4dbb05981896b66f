// The tower of five of the corpus, worked out by hand in tests/corpus/README.md. Lengths mm.

import { readFileSync } from 'node:fs';
import type { Report } from '@cairnmark/engine';
import { scoreClass } from '@cairnmark/engine';
import { decode } from '@cairnmark/formats';
import { describe, it } from 'vitest';
import { expectNear } from '../tools/within.ts';
import { STATICS } from './small-class.ts';

const BY_HAND: readonly (readonly [measure: string, value: number])[] = [
  ['footprint-area', 4000 + 3600 - 5 * 48],
  ['footprint-perimeter', 260 + 240 - 2 * (5 + 48)],
  ['footprint-inner-perimeter', 0],
  ['footprint-parts', 1],
  ['base-area', 4000 + 2500],
  ['base-perimeter', 260 + 200 - 2 * 43],
  ['courtyard-area', 0],
  ['hull-area', 7865],
  ['volume', 371666.667 + 28000 * Math.PI + 12000 * Math.PI],
  ['paper', 65047.595],
  ['touchable-surface', 44599.454],
  ['pieces', 5],
  ['kinds', 5],
  ['flat-faces', 21],
  ['curved-surfaces', 2],
  ['straight-edges', 36],
  ['curved-edges', 3],
  ['vertices', 24],
  ['corners', 25],
];
/** The figures above are printed to three decimals. */
const PRINTED = 0.0006;

describe('tower of five', () => {
  const report = towerReport();

  it.each(BY_HAND)('%s', (measure, value) => {
    expectNear(factOf(report, measure).value ?? Number.NaN, value, { absolute: PRINTED }, measure);
  });

  it('height: 140 by the model, 139 by the ruler, which counts', () => {
    const { value, predicted } = factOf(report, 'height');
    expectNear(value ?? Number.NaN, 139, { absolute: 0 });
    expectNear(predicted?.status === 'measured' ? predicted.value : Number.NaN, 50 + 50 + 40, { absolute: 1e-9 });
  });

  it('points: 13 whole centimetres less 7 begun times 10 cm2', () => {
    expectNear(report.total ?? Number.NaN, 13 - 7, { absolute: 0 });
  });
});

function towerReport(): Report {
  const file = readFileSync(new URL('../corpus/tower-of-five.json', import.meta.url), 'utf8');
  const decoded = decode(file, 'class');
  const scored = decoded.ok ? scoreClass(decoded.value.value, STATICS) : decoded;
  if (!scored.ok) throw new RangeError(JSON.stringify(scored.issues));
  const [report] = scored.value.reports.get('five') ?? [];
  if (report === undefined) throw new RangeError('no report');
  return report;
}

function factOf({ facts }: Report, id: string): Report['facts'][number] {
  const fact = facts.find((one) => one.id === id);
  if (fact === undefined) throw new RangeError(`no fact ${id}`);
  return fact;
}
