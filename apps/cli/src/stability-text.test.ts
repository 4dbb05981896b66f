import type { Layout, Stability } from '@cairnmark/geometry';
import { TILT_BANDS } from '@cairnmark/geometry';
import { terminalWords } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { FULL, judged, question } from '../../../tests/reference/judged-builds.ts';
import { cube, put } from '../../../tests/reference/stacked-builds.ts';
import { stabilityLines } from './stability-text.ts';

const words = terminalWords('en');
const inClass = words.inClass({
  ruler: { id: 'mm', unit: 'mm', stepMm: 1 },
  bands: TILT_BANDS,
  unitOf: () => 'mm',
  kindName: () => 'large cube',
  criterionName: (id) => id,
  groupName: (id) => id,
});
const lines = (stability: Stability | null, layout: Layout): readonly string[] =>
  stabilityLines(stability, layout, inClass, words);

describe('the lines on whether it stands', () => {
  const pieces = [put('cube', 0, 0), put('cube', 29.4, 0)];
  const judgement = judged(question(pieces, { cube: cube(50) }, FULL, 0.5));
  const told = lines(judgement, { kind: 'laid-out', pieces });
  const heading = told.indexOf('What this answer rests on:');

  it('have the verdict, then the figures further in, with the names of the class', () => {
    expect(told[0]).toBe('Falls: by the sums it cannot stand.');
    expect(heading).toBeGreaterThan(1);
    expect(told[1]).toContain('the large cube (piece 2), tipping to the right');
    for (const line of told.slice(1, heading)) expect(line).toMatch(/^ {2}\S/);
  });

  it('have the limits after them, the caution last', () => {
    expect(told.slice(heading + 1)).toHaveLength(6);
    expect(told.at(-1)).toBe(`  ${words.cautions['stands-or-falls']}`);
  });

  it('say of a build without drawing that it was not judged', () => {
    expect(lines(null, { kind: 'numbers-only', pieces: ['cube'] })).toEqual(['Not judged: no drawing of this build.']);
  });
});
