import { describe, expect, it } from 'vitest';
import { gapAllowanceOf } from './gap-allowance.ts';

describe('gaps that count as closed', () => {
  const strict = { gapAllowanceMm: 0.05 };

  it('are as wide as the challenge says, and at least 2 mm where places come from photos', () => {
    expect(gapAllowanceOf(strict, { kind: 'laid-out', pieces: [] })).toBe(0.05);
    expect(gapAllowanceOf(strict, { kind: 'numbers-only', pieces: [] })).toBe(0.05);
    expect(gapAllowanceOf(strict, { kind: 'laid-out', pieces: [], traced: true })).toBe(2);
    expect(gapAllowanceOf(strict, { kind: 'traced', outlines: [], pieces: [] })).toBe(2);
    expect(gapAllowanceOf({ gapAllowanceMm: 3 }, { kind: 'laid-out', pieces: [], traced: true })).toBe(3);
  });
});
