import type { Challenge, GradePreset, KindOfPiece } from '@cairnmark/engine';
import type { SolidSpec } from '@cairnmark/geometry';
import { riddlePoints, rulesOf } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { contextOf } from './context.ts';
import { dataOf, pagesOf, readyClass, sheetWords, textsOn } from './for-tests.ts';
import { riddlesOf } from './riddles.ts';

const kit = (...solids: readonly SolidSpec[]): Challenge['kit'] => {
  const { kit: ready } = readyClass();
  const [first] = ready.kinds as readonly [KindOfPiece, ...KindOfPiece[]];
  return { ...ready, kinds: solids.map((solid, k) => ({ ...first, id: `k${k}`, name: `Piece ${k}`, solid })) };
};

const prism = (sides: number): SolidSpec => ({ solid: 'regular-prism', sizes: { sides, edge: 40, height: 70 } });
const young = { gradePreset: 'grades-2-3', counting: 'all-surfaces' } as const;

describe('riddles', () => {
  it.each<GradePreset>(['grades-2-3', 'grades-4-5', 'grades-6-8'])(
    'of %s: the scored pieces leave one rule',
    (gradePreset) => {
      const { data, riddles } = riddlesOf(contextOf(dataOf(readyClass({ gradePreset }))));
      expect(riddles.length).toBe(gradePreset === 'grades-2-3' ? 1 : 2);
      for (const { family, riddle } of riddles) {
        const examples = riddle?.examples ?? [];
        const fitting = rulesOf(family, data.rows.length).filter((rule) => {
          const points = riddlePoints(data, rule);
          return examples.every(
            ({ kind, points: scored }) => points[data.kinds.findIndex(({ id }) => id === kind)] === scored,
          );
        });
        expect(fitting).toEqual([riddle?.rule]);
        expect(examples.length).toBeGreaterThan(1);
      }
    },
  );

  it('are the same each time, and others for another challenge', () => {
    const rules = (id: string) =>
      riddlesOf(contextOf(dataOf(readyClass({ id })))).riddles.map(({ riddle }) => riddle?.rule);
    expect(rules('tall')).toEqual(rules('tall'));
    expect(rules('tall')).not.toEqual(rules('wall'));
  });

  it('the sheet scores the examples, asks for the last piece, and does not tell the rule', () => {
    const data = dataOf(readyClass({ gradePreset: 'grades-2-3' }));
    const [{ riddle } = { riddle: null }] = riddlesOf(contextOf(data)).riddles;
    const [asked, answers] = [textsOn(pagesOf('riddle', data)), textsOn(pagesOf('riddle-key', data))];
    for (const { points } of riddle?.examples ?? []) expect(asked).toContain(String(points));
    expect(asked).toContain('?');
    expect(asked.join(' ')).not.toContain('The rule:');
    expect(answers.join(' ')).toContain('The rule:');
  });

  it('on prisms alone 2 an edge looks like 3 a corner, and that is told to the teacher', () => {
    const challenge = readyClass({ ...young, kit: kit(prism(3), prism(5), prism(6), prism(8)) });
    const texts = textsOn(pagesOf('riddle-key', dataOf(challenge))).join(' ');
    expect(texts).toContain('2 points for every edge looks the same as 3 points for every corner.');
    const { riddles } = riddlesOf(contextOf(dataOf(challenge)));
    expect(riddles[0]?.riddle?.sameAs).toEqual([]);
  });

  it('of balls alone, counted flat, nothing can be told', () => {
    const challenge = readyClass({
      ...young,
      counting: 'flat-only',
      kit: kit({ solid: 'sphere', sizes: { radius: 30 } }),
    });
    for (const language of ['en', 'es'] as const) {
      const data = dataOf(challenge, { words: sheetWords(language) });
      const none = sheetWords(language).printed.say('print.riddle-none');
      expect(textsOn(pagesOf('riddle', data)).join(' ')).toContain(none);
      expect(textsOn(pagesOf('riddle-key', data)).join(' ')).toContain(none);
    }
  });
});
