// Files as version 1 wrote them. They are never rewritten: whatever later versions bring, these are read for ever.

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decode } from './decode.ts';
import type { Format } from './formats.ts';

const FOLDER = new URL('../../../tests/corpus/kept/', import.meta.url);

function keptFile<F extends Format>(format: F, version: number) {
  const decoded = decode(readFileSync(new URL(`${format}-v${version}.json`, FOLDER), 'utf8'), format);
  if (!decoded.ok) throw new RangeError(`refused: ${JSON.stringify(decoded.issues)}`);
  return decoded.value.value;
}

describe('kept files', () => {
  it('are there for every format and version, and no others', () => {
    const versions = ['attempt-v1', 'challenge-v1', 'class-v1', 'kit-v1', 'report-v1'];
    expect(readdirSync(FOLDER).sort()).toEqual(versions.map((name) => `${name}.json`));
  });

  it('kit of version 1', () => {
    const [wedge, drum, ball] = keptFile('kit', 1).kinds;
    expect(wedge?.solid).toEqual({ solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } });
    expect(drum?.material).toEqual({ kind: 'folded-paper', gramsPerM2: 160, base: 'open', printedNet: false });
    expect([ball?.material, ball?.stock, ball?.friction]).toEqual([{ kind: 'full', densityGPerCm3: 0.08 }, 3, 0.3]);
  });

  it('challenge of version 1', () => {
    const { points, requirements, ranking, heightCounts, ...rest } = keptFile('challenge', 1);
    expect(points.map(({ points: each, per, capPoints }) => [each, per, capPoints])).toEqual([
      [3, 70, 30],
      [2, 1, undefined],
    ]);
    expect(requirements.map(({ consequence }) => consequence)).toEqual([
      { kind: 'costs', points: 7 },
      { kind: 'must' },
    ]);
    expect(ranking.tieBreaks).toEqual([{ by: 'height', better: 'less', roundTo: 5 }]);
    expect(heightCounts).toEqual(['photo', 'ruler', 'model']);
    expect([rest.ruler, rest.counting, rest.base, rest.gapAllowanceMm]).toEqual([
      'eighth-inch',
      'all-surfaces',
      'hull-of-contacts',
      2,
    ]);
  });

  it('attempt of version 1', () => {
    const { layout, observed, decisions, adjustments, answers } = keptFile('attempt', 1);
    expect(layout.kind === 'laid-out' && layout.pieces.map(({ xMm, on }) => [xMm, on])).toEqual([
      [3, 'table'],
      [70.5, undefined],
    ]);
    expect(observed).toEqual({ heightReadingsMm: [71, 73.5], photoHeightMm: 72, stoodSeconds: 35 });
    expect(decisions.map(({ value, takenBack }) => [value, takenBack?.reason])).toEqual([
      [73, 'The first reading was right.'],
      [2, undefined],
    ]);
    expect([adjustments[0]?.points, answers]).toEqual([-1.5, { 'no-tape': true }]);
  });

  it('class of version 1', () => {
    const { groups, attempts, day } = keptFile('class', 1);
    expect(groups[0]?.measured).toEqual({ wedge: { a: 30, b: 40, c: 51, height: 69 } });
    expect(attempts.map(({ state }) => state.kind)).toEqual([
      'stood',
      'fell',
      'fell-before-measuring',
      'absent',
      'not-taking-part',
    ]);
    expect(attempts.map(({ layout }) => layout.kind)).toEqual([
      'laid-out',
      'traced',
      'numbers-only',
      'numbers-only',
      'numbers-only',
    ]);
    expect(day).toEqual({
      kind: 'mean-place',
      placePoints: [5, 3, 1],
      weights: { 'long-pier': 2 },
      meanOfThosePresent: true,
    });
  });

  it('report of version 1', () => {
    const { facts, gaps, stockBreaches, points, total } = keptFile('report', 1);
    expect(facts.map(({ id, value, source }) => [id, value, source])).toEqual([
      ['height', 72, 'observed'],
      ['volume', 178668.68064017635, 'predicted'],
      ['kind:wedge', 1, 'predicted'],
      ['judged:idea', 3.5, 'judged'],
      ['footprint-area', null, null],
    ]);
    expect(gaps).toEqual([{ at: [30.5, -7], widthMm: 1.5 }]);
    expect(stockBreaches).toEqual([{ kind: 'drum', used: 7, stock: 5 }]);
    expect([points.map((line) => line.points), total]).toEqual([[18, 7], 23.5]);
  });
});
