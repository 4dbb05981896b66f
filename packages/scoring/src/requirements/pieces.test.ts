import { describe, expect, it } from 'vitest';
import type { Pieces, Requirement } from '../types.ts';
import { requirementLines } from './lines.ts';

const MUST = { kind: 'must' } as const;
const ONLY_KINDS: Requirement = { id: 'shapes', kind: 'only-kinds', kinds: ['cube', 'cone'], consequence: MUST };
const ONLY_EARNED: Requirement = { id: 'earned', kind: 'only-earned', consequence: MUST };

const lineOf = (requirement: Requirement, used: Pieces, earned: Pieces = null) =>
  requirementLines([requirement], new Map(), {}, used, earned)[0];

describe('rules about pieces', () => {
  it('[Q6] only kinds: every piece of another kind breaks it, and each such kind is told', () => {
    expect(lineOf(ONLY_KINDS, { cube: 7, cone: 3, drum: 0 })).toMatchObject({ verdict: 'kept', breaches: [] });
    expect(lineOf(ONLY_KINDS, { drum: 3, cube: 5, toString: 1 })).toEqual({
      requirement: 'shapes',
      verdict: 'broken',
      measure: null,
      value: null,
      comparison: null,
      limit: null,
      breaches: [
        { kind: 'drum', used: 3, allowed: 0 },
        { kind: 'toString', used: 1, allowed: 0 },
      ],
      note: null,
      consequence: MUST,
    });
    expect(lineOf({ ...ONLY_KINDS, kinds: [] }, { cube: 1 })?.verdict).toBe('broken');
    expect(lineOf({ ...ONLY_KINDS, kinds: [] }, {})?.verdict).toBe('kept');
  });

  it('[Q7] only earned: up to what the group has of each kind, and none of what it has none of', () => {
    const earned = { cube: 5, drum: 3 };
    expect(lineOf(ONLY_EARNED, { cube: 5, drum: 2 }, earned)).toMatchObject({ verdict: 'kept', breaches: [] });
    expect(lineOf(ONLY_EARNED, { cube: 6, drum: 3, cone: 1, valueOf: 1 }, earned)).toMatchObject({
      verdict: 'broken',
      breaches: [
        { kind: 'cube', used: 6, allowed: 5 },
        { kind: 'cone', used: 1, allowed: 0 },
        { kind: 'valueOf', used: 1, allowed: 0 },
      ],
    });
    expect(lineOf(ONLY_EARNED, {}, {})?.verdict).toBe('kept');
  });

  it('[Q10] pieces that are not known keep and break nothing, and the line names the fact that is missing', () => {
    const unknown = { verdict: 'not-measured', value: null, breaches: [] };
    expect(lineOf(ONLY_KINDS, null)).toMatchObject({ ...unknown, measure: 'pieces' });
    expect(lineOf(ONLY_EARNED, null, { cube: 5 })).toMatchObject({ ...unknown, measure: 'pieces' });
    expect(lineOf(ONLY_EARNED, { cube: 5 }, null)).toMatchObject({ ...unknown, measure: 'earned:pieces' });
  });
});
