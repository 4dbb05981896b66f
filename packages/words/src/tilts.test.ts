import type { Tilt, Vec2 } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { english } from './en/index.ts';
import { spanish } from './es/index.ts';
import { BANDS, inClass } from './in-class.ts';
import { degreesText, sideText, tiltText } from './tilts.ts';
import type { Voice } from './voice.ts';

const DEGREE = Math.PI / 180;
const at = (degrees: number): Vec2 => [Math.cos(degrees * DEGREE), Math.sin(degrees * DEGREE)];
const bears = (degrees: number, towards: Vec2): Tilt => ({
  tiltRad: degrees * DEGREE,
  push: Math.tan(degrees * DEGREE),
  direction: towards,
});
const reader: Voice['reader'] = {
  ruler: { id: 'mm', unit: 'mm', stepMm: 1 },
  bands: BANDS,
  unitOf: () => 'mm',
  kindName: (kind) => kind,
  criterionName: (id) => id,
  groupName: (id) => id,
};
const en: Voice = { words: english, reader };
const es: Voice = { words: spanish, reader };

describe('a tilt', () => {
  it('is told in degrees and as a push, rounded down: tenths below 10, whole above', () => {
    // atan 0.12 = 6.843 degrees, atan 0.5 = 26.565, tan 2.99 = 0.05223, tan 45 = 1.
    expect(tiltText({ tiltRad: Math.atan(0.12), push: 0.12 }, en)).toBe(
      '6.8° (like a push of 12 % of its weight sideways)',
    );
    expect(tiltText({ tiltRad: Math.atan(0.5), push: 0.5 }, en)).toBe(
      '26° (like a push of 50 % of its weight sideways)',
    );
    expect(tiltText(bears(2.99, at(0)), es)).toBe('2,9° (como un empujón de lado de 5,2 % de su peso)');
    expect(tiltText(bears(45, at(0)), en)).toBe('45° (like a push of 100 % of its weight sideways)');
  });

  it('that is hardly any is less than a tenth, not 0', () => {
    expect(tiltText(bears(0.03, at(0)), es)).toBe(
      'menos de 0,1° (como un empujón de lado de menos de 0,1 % de su peso)',
    );
  });

  it('on a bound is shown with it, and short of the bound below it', () => {
    expect([degreesText(BANDS.closeRad, en), degreesText(BANDS.steadyRad, en)]).toEqual(['3.0°', '10°']);
    expect([degreesText(2.9998 * DEGREE, en), degreesText(9.9998 * DEGREE, en)]).toEqual(['2.9°', '9.9°']);
  });

  it('is never told as more than it is, nor as a tenth or a tenth of it less (seed 5306)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 90, noNaN: true }), (degrees) => {
        const shown = Number(degreesText(degrees * DEGREE, en).slice(0, -1));
        // 1.1e-4: what counts as noise, and the rounding of the two conversions.
        return shown <= degrees + 1.1e-4 && shown > degrees - Math.max(0.1, degrees / 10);
      }),
      { seed: 5306 },
    );
  });
});

describe('a side', () => {
  it('is one of eight, the nearest; right is 0, back is 90', () => {
    const sides = (voice: Voice) => [0, 45, 90, 135, 180, 225, 270, 315].map((degrees) => sideText(at(degrees), voice));
    expect(sides(en)).toEqual([
      'to the right',
      'to the back right',
      'to the back',
      'to the back left',
      'to the left',
      'to the front left',
      'to the front',
      'to the front right',
    ]);
    expect(new Set(sides(es)).size).toBe(8);
    expect(sideText([-1, -0], en)).toBe('to the left');
    for (const degrees of [-22, 22, 338, 382]) expect(sideText(at(degrees), en)).toBe('to the right');
    expect([sideText(at(23), en), sideText(at(-23), en)]).toEqual(['to the back right', 'to the front right']);
  });
});

describe('the tilt to one side that was asked about', () => {
  const words = inClass('en', 'mm');
  it('names the side, with its degrees when it has no name of its own', () => {
    expect(words.tiltTowards(bears(12, at(180)))).toBe(
      'With the table tilted down to the left it stands up to 12° (like a push of 21 % of its weight sideways).',
    );
    expect(words.tiltTowards(bears(12, at(30)))).toMatch(
      /tilted down to the back right \(30° round from the right\) it/,
    );
    expect(words.tiltTowards(bears(12, at(-30)))).toMatch(/to the front right \(330° round from the right\)/);
    expect(words.tiltTowards(bears(12, at(359.2)))).toMatch(/to the right \(359° round from the right\)/);
  });

  it('says when it bears none, and when there is no answer', () => {
    expect(words.tiltTowards(bears(0, at(90)))).toBe('With the table tilted down to the back it goes at a touch.');
    expect(words.tiltTowards(null)).toBe(
      'Not known for this side: it falls on a level table already, or is not predicted, or this was not worked out.',
    );
  });
});
