// Every working can be worked out again: each line from its own inputs, the last line to the value of the fact.

import { describe, expect, it } from 'vitest';
import { box, factsOf, kit, laid, PLAIN, put } from '../../../../tests/reference/measured-builds.ts';
import type { Step } from '../kernel/formula.ts';
import { evaluate } from '../kernel/formula.ts';
import { CATALOGUE } from '../solids/catalogue.ts';
import type { SolidId } from '../solids/types.ts';
import type { Layout } from '../stack/types.ts';
import type { MeasuredFact } from './types.ts';

const ids = Object.keys(CATALOGUE) as SolidId[];
const kinds = kit({
  ...Object.fromEntries(ids.map((id) => [id, { solid: id, sizes: CATALOGUE[id].example }])),
  brick: box(60, 40, 30),
});
/** The solids on their usual sides, twice every other one, far apart and two high on a brick. */
const pieces = ids.flatMap((id, index) => (index % 2 === 0 ? [id] : [id, id]));
const usual = (id: string): string => {
  const made = CATALOGUE[id as SolidId].make(CATALOGUE[id as SolidId].example);
  if (!made.ok) throw new Error(`${id} cannot be made`);
  return made.value.restings[0]!.id;
};

const layouts: Readonly<Record<string, Layout>> = {
  'laid out': laid(...pieces.flatMap((id, spot) => [put('brick', 300 * spot, 0), put(id, 300 * spot, 0, usual(id))])),
  'the ball between two bricks': laid(put('brick', -45, 0), put('brick', 45, 0), put('sphere', 0, 0, usual('sphere'))),
  traced: {
    kind: 'traced',
    outlines: [{ outline: { kind: 'disc', centre: [3, 5], radiusMm: 7 }, planeMm: 0, onTable: true }],
    pieces,
    heightMm: 215,
  },
  'numbers only': { kind: 'numbers-only', pieces },
};

/** Formulas are evaluated as they were written: the same operations in the same order, so to the last bit. */
function expectWorksOut(steps: readonly Step[], value: number, what: string): void {
  for (const { symbol, formula, inputs, result } of steps) {
    const values = Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value]));
    expect(evaluate(formula, values), `${what}, line ${symbol}`).toBe(result.value);
  }
  expect(steps.at(-1)?.result.value, `${what}, last line`).toBe(value);
}

function factsWithLines(layout: Layout): readonly MeasuredFact[] {
  return [...factsOf(layout, kinds, PLAIN).values()].flatMap((fact) =>
    fact.status === 'measured' && fact.working.steps.length > 0 ? [fact] : [],
  );
}

const measured = Object.entries(layouts).map(([name, layout]) => ({ name, facts: factsWithLines(layout) }));

describe.each(measured)('$name', ({ facts }) => {
  it('every line gives its result, the last one the value', () => {
    expect(facts.map(({ id }) => id)).toEqual(expect.arrayContaining(['volume', 'paper', 'pieces', 'faces']));
    for (const { id, value, unit, working } of facts) {
      expectWorksOut(working.steps, value, id);
      expect(working.steps.at(-1)?.result.unit).toBe(unit);
    }
  });

  it('every part gives its share', () => {
    for (const { id, working } of facts) {
      for (const { kind, each, steps } of working.parts) {
        if (steps.length > 0) expectWorksOut(steps, each, `${id} of ${kind}`);
      }
    }
  });

  it('the parts of a sum add up to its first line', () => {
    for (const { id, working } of facts) {
      if (working.parts.length === 0 || working.method === 'highest-point') continue;
      const total = working.parts.reduce((sum, { times, each }) => sum + times * each, 0);
      const first = working.steps[0]!.result.value;
      expect(Math.abs(total - first), id).toBeLessThanOrEqual(1e-12 * Math.abs(first));
    }
  });
});

describe('lines of volume and paper', () => {
  it('lead from the sizes of each kind, whatever the solid', () => {
    for (const fact of measured[0]!.facts) {
      if (fact.id !== 'volume' && fact.id !== 'paper') continue;
      expect(fact.working.parts).toHaveLength(ids.length + 1);
      for (const part of fact.working.parts) expect(part.steps.length, part.kind).toBeGreaterThan(0);
    }
  });
});
