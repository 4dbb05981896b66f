import { describe, expect, it } from 'vitest';
import { inClass } from './in-class.ts';

const en = inClass('en', 'half-cm');
const es = inClass('es', 'half-cm');
const FELL = { kind: 'fell', afterSeconds: 7 } as const;
const BEFORE = { kind: 'fell-before-measuring' } as const;

describe('a build that fell', () => {
  it('is told with what it counts', () => {
    expect(en.fallen(FELL, { counts: 'out' })).toBe('Fell after 7 seconds. It takes no place.');
    expect(en.fallen(BEFORE, { counts: 'points', points: 5 })).toBe(
      'Fell before it was measured. It counts 5 points, whatever was measured.',
    );
    expect(es.fallen(FELL, { counts: 'as-measured' })).toBe('Se cayó después de 7 segundos. Cuenta según lo medido.');
  });

  it('is what one that stood, or that is not there, is not', () => {
    for (const kind of ['stood', 'absent', 'not-taking-part'] as const) {
      expect(en.fallen({ kind }, { counts: 'points', points: 5 })).toBeNull();
    }
  });

  it('is what the challenge has a rule for', () => {
    expect(en.falling({ counts: 'out' })).toBe('A build that falls takes no place.');
    expect(es.falling({ counts: 'points', points: 1 })).toBe(
      'Una construcción que se cae cuenta 1 punto, sea cual sea su medida.',
    );
    expect(en.falling({ counts: 'as-measured' })).toBe('A build that falls counts as it was measured.');
  });
});
