import fc from 'fast-check';
import { expect, it } from 'vitest';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { textWidthMm } from './measure.ts';
import { wrap } from './wrap.ts';

const seed = freshSeed('wrapped text');
const word = fc.string({ unit: fc.constantFrom(...'aeimnstMW.,ñ¿'), minLength: 1, maxLength: 12 });

it(`text in lines keeps all its words, fits, and fills each line as far as it can (seed ${seed})`, () => {
  let [set, refused] = [0, 0];
  fc.assert(
    fc.property(fc.array(word, { maxLength: 30 }), fc.integer({ min: 15, max: 90 }), (words, widthMm) => {
      const type = { font: 'regular', sizeMm: 5 } as const;
      const result = wrap(words.join(' '), type, widthMm, 3);
      const longest = Math.max(0, ...words.map((one) => textWidthMm(one, { ...type, sizeMm: 3 })));
      if ('word' in result) {
        refused += 1;
        expectNear(result.neededMm, longest, { absolute: 1e-9 });
        expect(result.neededMm).toBeGreaterThan(widthMm);
        return;
      }
      set += 1;
      expect(result.lines.join(' ')).toBe(words.join(' '));
      expect(result.sizeMm).toBeLessThanOrEqual(5);
      expect(result.sizeMm).toBeGreaterThanOrEqual(3);
      for (const [k, line] of result.lines.entries()) {
        expect(textWidthMm(line, result)).toBeLessThanOrEqual(widthMm + 1e-6);
        const next = result.lines[k + 1]?.split(' ')[0];
        if (next !== undefined) expect(textWidthMm(`${line} ${next}`, result)).toBeGreaterThan(widthMm);
      }
    }),
    { seed, numRuns: share(2000, 200) },
  );
  expect([set > 0, refused > 0]).toEqual([true, true]);
});

it('a line feed begins a new line, and a space that does not break keeps words together', () => {
  const type = { font: 'regular', sizeMm: 4 } as const;
  const broken = wrap('Tall Light\nfive\u00a0pieces only', type, 21, 4);
  expect('lines' in broken && broken.lines).toEqual(['Tall Light', 'five\u00a0pieces', 'only']);
});

it('a width is the sum of the widths of the font metrics', () => {
  // Helvetica-Bold.afm: A 722, V 667, space 278, ñ (ntilde) 611.
  expectNear(textWidthMm('AV ñ', { font: 'bold', sizeMm: 10 }), 22.78, { absolute: 1e-9 });
  expect(() => textWidthMm('π', { font: 'bold', sizeMm: 10 })).toThrow(RangeError);
});
