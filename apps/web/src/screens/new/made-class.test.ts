import { READY_IDS } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import { planWords, wordsFor } from '@cairnmark/words';
import { expect, it } from 'vitest';
import type { NewClass } from './made-class.ts';
import { madeClass } from './made-class.ts';
import { namesIn } from './names.ts';

const FORM: NewClass = {
  name: 'Harbour, period 3',
  groups: ['Puffins', 'Terns', 'Gannets'],
  challenges: ['tallest', 'one-of-every-kind'],
  grade: 'grades-4-5',
  units: 'cm',
  kit: 'ready',
};
const NAMES = namesIn(planWords('es'), wordsFor('es'));

it('has the groups, the challenges with one kit, and points for each place', () => {
  const { groups, challenges, day, attempts } = madeClass(FORM, NAMES);
  expect(groups.map(({ id }) => id)).toEqual(['puffins', 'terns', 'gannets']);
  expect(challenges.map(({ id }) => id)).toEqual(FORM.challenges);
  expect(new Set(challenges.map(({ kit }) => kit)).size).toBe(1);
  expect(day.placePoints).toEqual([3, 2, 1]);
  expect(attempts).toEqual([]);
});

it.each(['en', 'es'] as const)('can be kept, whatever is chosen (%s)', (language) => {
  const names = namesIn(planWords(language), wordsFor(language));
  for (const kit of ['ready', 'own'] as const) {
    for (const units of ['cm', 'in'] as const) {
      for (const grade of ['grades-2-3', 'grades-4-5', 'grades-6-8'] as const) {
        const made = madeClass({ ...FORM, challenges: READY_IDS, kit, units, grade }, names);
        expect(() => encode('class', made)).not.toThrow();
      }
    }
  }
});

it('a kit of their own begins empty', () => {
  expect(madeClass({ ...FORM, kit: 'own' }, NAMES).challenges.map(({ kit }) => kit.kinds)).toEqual([[], []]);
});
