// What is not known, not yet or no longer, as the terminal tells it: points that could be lost by what was not measured,
// challenges to come, decisions that others replaced.

import type { Challenge } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, classOf, numbersOnly } from '../../../tests/reference/small-class.ts';
import { tried } from './tried.ts';

const linesOf = (out: string): readonly string[] => out.split('\n').map((line) => line.trim());

describe('a measure by which points may be lost, and that was not measured', () => {
  const flat = challenge({
    points: [
      { id: 'height', measure: 'height', points: 1, per: 10, rounding: 'down' },
      { id: 'base', measure: 'base-area', points: -1, per: 100, rounding: 'down' },
    ],
    requirements: [
      {
        id: 'half-minute',
        kind: 'measured',
        measure: 'stood-seconds',
        comparison: 'at-least',
        limit: 30,
        consequence: { kind: 'costs', points: 2 },
      },
      { id: 'no-tape', kind: 'judged', text: 'No tape', consequence: { kind: 'costs', points: 3 } },
    ],
  });
  const byPoints = {
    ...flat,
    ranking: { first: { by: 'points', better: 'more', roundTo: 1 }, tieBreaks: [] },
  } as const;
  const told = async (at: Challenge, ...args: string[]) => {
    const attempts = [
      attempt({ observed: { heightReadingsMm: [90], stoodSeconds: 31 } }),
      attempt({ id: 'b', group: 'puffins', layout: numbersOnly('slab'), observed: { heightReadingsMm: [80] } }),
    ];
    const files = { 'c.json': encode('class', classOf({ challenges: [at], attempts })) };
    const [command = '', ...rest] = args;
    return (await tried([command, 'c.json', ...rest], files)).out;
  };

  it('leaves the build without a place under points, and names it; a rule not judged yet stands open', async () => {
    const score = await told(byPoints, 'score');
    expect(score).toMatch(/1st +terns +−15 points +"No tape" has not been judged yet\.\n/);
    expect(linesOf(score)).toContain('puffins: Not measured: area on the table and time it stood.');
    expect(await told(byPoints, 'score', '--lang', 'es')).toContain('puffins: Sin medir: área sobre la mesa y tiempo');
  });

  it('leaves the place by height, and says beside it and row by row that the points are not known', async () => {
    const score = await told(flat, 'score', '--rows');
    expect(score).toMatch(/2nd +puffins +80 mm +points not known: area on the table and time it stood not measured\n/);
    const rows = linesOf(score.slice(score.indexOf('puffins (b)')));
    expect(rows.slice(1, 6)).toEqual([
      'Height 80 mm. 1 point for every 10 mm, rounded down: 8 × 1 point = 8 points',
      'Area on the table: not measured. What it takes away is not known.',
      'Time it stood: not measured. The rule says at least 30 seconds. Whether it costs 2 points is not known.',
      '"No tape" has not been judged yet.',
      'Total: not known',
    ]);
  });

  it('puts nobody ahead by it', async () => {
    const lines = linesOf(await told(byPoints, 'why', 'terns', 'puffins'));
    expect(lines).toContain('Points for area on the table: −24 points (terns), not known (puffins).');
    expect(lines).toContain('Total: −15 points (terns), not known (puffins).');
  });
});

describe('a day in progress', () => {
  it('goes on without the challenge that nobody has tried yet, and says so', async () => {
    const later = challenge({ id: 'wall', name: 'Wall' });
    const low = challenge({ id: 'low', name: 'Low' });
    const record = classOf({
      challenges: [challenge(), low, later],
      attempts: [attempt(), attempt({ id: 'b', group: 'puffins' }), attempt({ id: 'c', challenge: 'low' })],
    });
    const files = { 'c.json': encode('class', record) };
    const { out } = await tried(['score', 'c.json'], files);
    expect(out).toContain('\nWall\nRanking: height, more is better, rounded to 1 mm.\nNot played yet.\n');
    const day = linesOf(out.slice(out.indexOf('Whole day'))).map((line) => line.replace(/ {2,}/g, ' | '));
    expect(day).toContain('1st | terns | 32 points | 16 points | 16 points | not played yet | 2 of 2');
    expect(day).toContain('puffins | no result | 16 points | no result | not played yet | 1 of 2');
    const spanish = (await tried(['score', 'c.json', '--lang', 'es'], files)).out;
    expect(spanish).toMatch(/\nSin jugar todavía\.\n/);
    expect(spanish).toMatch(/terns +32 puntos +16 puntos +16 puntos +sin jugar todavía +2 de 2\n/);
  });
});

describe('several decisions on one value', () => {
  it('tells which one counts now and what each replaced', async () => {
    const decided = (value: number, minute: number, by: string) => ({
      measure: 'height',
      value,
      by,
      reason: 'read again',
      at: `2026-03-05T10:${minute}:00+01:00`,
    });
    const decisions = [decided(84, 40, 'Ada'), decided(86, 50, 'Ben')];
    const record = classOf({ attempts: [attempt({ observed: { heightReadingsMm: [90] }, decisions })] });
    const { out } = await tried(['score', 'c.json'], { 'c.json': encode('class', record) });
    expect(out).toMatch(/1st +terns +86 mm\n/);
    expect(linesOf(out)).toContain(
      'terns: height 84 mm instead of 90 mm, decided by Ada (counts no longer): read again',
    );
    expect(linesOf(out)).toContain('terns: height 86 mm instead of 84 mm, decided by Ben (counts now): read again');
  });
});
