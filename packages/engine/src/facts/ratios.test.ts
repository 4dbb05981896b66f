// A cube of 50 on a slab of 60 x 40: 80 mm high by its drawing, 40 mm wide at the least.

import { describe, expect, it } from 'vitest';
import { attempt, challenge, laid, numbersOnly, reportOn } from '../../../../tests/reference/small-class.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Attempt, Challenge, Decision } from '../types.ts';

const slenderness = (changes: Partial<Attempt>, at: Challenge = challenge()) => {
  const fact = reportOn(attempt(changes), at).facts.find(({ id }) => id === 'height-to-width');
  if (fact === undefined) throw new RangeError('no height to width');
  return fact;
};
const read = (heightMm: number) => ({ observed: { heightReadingsMm: [heightMm] } });
const decided = (measure: string, value: number): Partial<Attempt> => {
  const decision: Decision = { measure, value, by: 'teacher', reason: 'r', at: '2026-03-05T10:50:00+01:00' };
  return { decisions: [decision] };
};

describe('a ratio', () => {
  it('[A13] is that of the drawing where the drawing counts', () => {
    const drawn = slenderness({});
    expectNear(drawn.value ?? Number.NaN, 2, { relative: 1e-9 });
    expect(drawn.source).toBe('predicted');
    expect(slenderness(read(70), challenge({ heightCounts: ['model'] }))).toEqual({ ...drawn });
  });

  it('[A13] is that of the height that was read or decided, and the drawn one stays beside it', () => {
    const fact = slenderness(read(70));
    expectNear(fact.value ?? Number.NaN, 70 / 40, { relative: 1e-9 });
    expect([fact.source, fact.predicted?.status]).toEqual(['observed', 'measured']);
    // 3 mm of a reading over 40 mm, and 70 / 40 times what the ruler leaves open of the width (2 mm / root 12) over 40.
    expectNear(fact.tolerance, Math.hypot(3, (70 / 40) * (2 / Math.sqrt(12))) / 40, { relative: 1e-6 });
    expectNear(fact.errors['slab/width'] ?? Number.NaN, (-(70 / 40) * (2 / Math.sqrt(12))) / 40, { relative: 1e-6 });
    const byPerson = slenderness({ ...read(70), ...decided('height', 60) });
    expectNear(byPerson.value ?? Number.NaN, 60 / 40, { relative: 1e-9 });
    expect(byPerson.source).toBe('decided');
  });

  it('[A13] that a person decided stays, whatever was read', () => {
    expect(slenderness({ ...read(70), ...decided('height-to-width', 1.5) }).value).toBe(1.5);
  });

  it('[A13] is not measured where one of the two that count is not, or where the width is 0', () => {
    expect(slenderness({}, challenge({ heightCounts: ['ruler'] })).value).toBeNull();
    expect(slenderness({ ...read(70), layout: numbersOnly('slab') }).value).toBeNull();
    expect(slenderness({ ...read(70), ...decided('base-width', 0), layout: laid('cube') }).value).toBeNull();
  });
});
