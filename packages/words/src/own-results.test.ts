import type { OwnLine } from '@cairnmark/engine';
import { describe, expect, it } from 'vitest';
import { inClass } from './in-class.ts';

const en = inClass('en', 'half-cm');
const es = inClass('es', 'half-cm');
const AGREES: OwnLine = {
  measure: 'volume',
  own: 497_000,
  expected: 496_900,
  source: 'predicted',
  tolerance: 6500,
  verdict: 'agrees',
  slip: null,
  points: 0,
};

describe("a group's own result", () => {
  it('is compared, and earns what was set for it', () => {
    expect(en.own(AGREES, 'key')).toBe('Volume: you found 497 cm³. That agrees.');
    expect(en.own({ ...AGREES, points: 2 }, 'key')).toBe('Volume: you found 497 cm³. That agrees. It earns 2 points.');
    expect(es.own({ ...AGREES, own: 480_500, verdict: 'close' }, 'key')).toBe(
      'Volumen: resultado propio, 480,5 cm³. Está cerca.',
    );
  });

  it('that differs is told with the step that seems to differ, and never with the value that is right', () => {
    const doubled: OwnLine = { ...AGREES, own: 1_988_000, verdict: 'check-the-working', slip: 'diameter-for-radius' };
    expect(en.own(doubled, 'key')).toBe(
      'Volume: you found 1988 cm³. Check your working. It comes out with the diameter in place of the radius: look at the step with the radius.',
    );
    expect(es.own({ ...doubled, slip: 'other-pi' }, '3.14')).toBe(
      'Volumen: resultado propio, 1988 cm³. Revisa el cálculo. Sale así con otro número para π. La clase toma π como 3,14.',
    );
    expect(en.own(doubled, 'key')).not.toContain('49');
  });

  it('without a value beside it says so', () => {
    const alone: OwnLine = { ...AGREES, expected: null, source: null, verdict: 'not-measured' };
    expect(en.own(alone, 'key')).toBe('Volume: you found 497 cm³. There is nothing to compare it with.');
    expect(en.ownExpected(alone, 'key')).toBeNull();
  });

  it('is held against what the pi of the class gives', () => {
    expect(en.ownExpected(AGREES, '22/7')).toBe('Volume, worked out with π as 22/7: 497 cm³ ± 7 cm³.');
    expect(es.ownExpected({ ...AGREES, measure: 'faces', expected: 21, tolerance: 0 }, 'key')).toBe(
      'Caras, calculado con la tecla π: 21 caras.',
    );
  });

  it('or, where there is no drawing, against what was measured or decided', () => {
    const read: OwnLine = { ...AGREES, measure: 'height', own: 350, expected: 347, source: 'observed', tolerance: 3 };
    expect(en.ownExpected(read, 'key')).toBe('Height, measured: 34.5 cm ± 0.3 cm.');
    expect(es.ownExpected({ ...read, source: 'decided' }, 'key')).toBe('Altura, decidido: 34,5 cm ± 0,3 cm.');
  });
});
