import { describe, expect, it } from 'vitest';
import { EXAMPLES, exampleData } from '../../../../tests/reference/lab/examples.ts';
import { familyOnKit, riddle } from './riddle.ts';
import type { RuleFamily } from './riddle-types.ts';
import { RULE_FAMILIES, riddlePoints, rulesOf } from './rule-families.ts';

const ruleOf = ({ w, c }: { readonly w: readonly number[]; readonly c: number }) => ({ rates: w, each: c });

describe('guess the rule', () => {
  it.each(EXAMPLES.riddles)('[F12] [F13] $name', (one) => {
    const data = exampleData(one.kit, one.rows);
    const family = one.family as RuleFamily;
    const { examples, check, all, sameAs, rule } = riddle(data, family, ruleOf(one.rule));
    const onKit = familyOnKit(data, family);
    expect([onKit.rules, onKit.different]).toEqual([one.familySize, one.distinct]);
    expect(sameAs).toEqual((one.sameAs ?? []).map(ruleOf));
    expect(sameAs.length === 0).toBe(one.identifiable);
    const told = (shown: readonly { readonly kind: string; readonly points: number }[]): number =>
      rulesOf(family, one.rows.length).filter((other) => {
        const points = riddlePoints(data, other);
        return shown.every((piece) => points[one.kit.indexOf(piece.kind)] === piece.points);
      }).length;
    // By the examples alone nothing but the rule and its twins is left, and with one example less more is.
    expect(told(examples)).toBe(1 + sameAs.length);
    for (const left of examples)
      expect(told(examples.filter((piece) => piece !== left))).toBeGreaterThan(1 + sameAs.length);
    expect(examples.map(({ kind }) => kind)).not.toContain(check?.kind);
    if (!one.identifiable) return;
    expect(examples).toHaveLength(one.fewestExamples ?? -1);
    expect(all).toEqual(one.ask);
    expect(onKit.examplesForAll).toHaveLength(one.universalSize ?? -1);
    expect(
      new Set(
        rulesOf(family, one.rows.length).map((other) =>
          onKit.examplesForAll.map((kind) => riddlePoints(data, other)[one.kit.indexOf(kind)]).join(),
        ),
      ).size,
    ).toBe(one.distinct);
    expect(riddlePoints(data, rule)).toEqual(one.ask?.map(({ points }) => points));
  });

  it('[F13] cube and square pyramid separate all rules of all four families on faces, edges, vertices', () => {
    const data = exampleData(['cube', 'sqPyr'], ['F', 'E', 'V']);
    for (const family of RULE_FAMILIES) expect([family, familyOnKit(data, family).alike]).toEqual([family, []]);
  });

  it('[F13] on prisms 2 an edge is 3 a vertex, and no piece tells', () => {
    const data = exampleData(['cube', 'triPrism', 'pentPrism', 'hexPrism', 'octPrism'], ['F', 'E', 'V']);
    expect(familyOnKit(data, 'one').alike).toEqual([
      [
        { rates: [0, 2, 0], each: 0 },
        { rates: [0, 0, 3], each: 0 },
      ],
    ]);
  });

  it('[F13] the piece to check on tells something new, where there is such a one', () => {
    // 1 a curved surface: the cuboid is like the cube, the triangular prism earns nothing, the cone earns some.
    const data = exampleData(['cube', 'cylinder', 'cuboid', 'triPrism', 'cone'], ['Ff', 'Cs', 'Se', 'V']);
    const curved = riddle(data, 'one+c', { rates: [0, 1, 0, 0], each: 0 });
    expect([curved.examples.map(({ kind }) => kind), curved.check]).toEqual([
      ['cube', 'cylinder'],
      { kind: 'cone', points: 1 },
    ]);
    expect(riddle(data, 'one', { rates: [0, 0, 0, 1], each: 0 }).check).toEqual({ kind: 'cylinder', points: 0 });
  });

  it('[F13] without a further piece there is none to check the guess on', () => {
    const data = exampleData(['cube'], ['F']);
    expect(riddle(data, 'one', { rates: [3], each: 0 })).toMatchObject({
      examples: [{ kind: 'cube', points: 18 }],
      check: null,
    });
  });

  it('refuses a rule that is not of the family', () => {
    expect(() => riddle(exampleData(['cube'], ['F']), 'one', { rates: [7], each: 0 })).toThrow(RangeError);
  });
});
