// Files as each version wrote them. They are never rewritten: whatever later versions bring, these are read for ever.

import { readdirSync, readFileSync } from 'node:fs';
import type { Attempt, Kit } from '@cairnmark/engine';
import { describe, expect, it } from 'vitest';
import { decode } from './decode.ts';
import type { Format } from './formats.ts';
import { FORMATS } from './formats.ts';
import { presentVersion, STEPS } from './steps.ts';

const FOLDER = new URL('../../../tests/corpus/kept/', import.meta.url);

function keptFile<F extends Format>(format: F, version: number) {
  const decoded = decode(readFileSync(new URL(`${format}-v${version}.json`, FOLDER), 'utf8'), format);
  if (!decoded.ok) throw new RangeError(`refused: ${JSON.stringify(decoded.issues)}`);
  return decoded.value.value;
}

describe('kept files', () => {
  it('are there for every format and version, and no others', () => {
    const names = FORMATS.flatMap((format) =>
      Array.from({ length: presentVersion(format, STEPS) }, (_, k) => `${format}-v${k + 1}.json`),
    );
    expect(readdirSync(FOLDER).sort()).toEqual(names.sort());
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
    expect([adjustments[0]?.points, answers]).toEqual([-1.5, { 'no-tape': { kept: true } }]);
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

  it('of version 1 say as much of surfaces, slack and standing as could be known then', () => {
    const { kinds, frictions } = keptFile('kit', 1);
    expect([kinds.map(({ surface }) => surface), frictions]).toEqual([['paper', 'paper', 'solid'], []]);
    const { slackMm, kit } = keptFile('challenge', 1);
    expect([slackMm, kit.kinds.map(({ surface }) => surface)]).toEqual([2, ['paper', 'paper', 'solid']]);
    const { challenges } = keptFile('class', 1);
    expect(challenges.map((one) => [one.slackMm, one.kit.frictions])).toEqual([[2, []]]);
    expect(keptFile('report', 1).stability).toBeNull();
  });

  it('kit of version 2', () => {
    const { kinds, frictions } = keptFile('kit', 2);
    expect(kinds.map(({ surface }) => surface)).toEqual(['paper', 'paper', 'foam']);
    expect(frictions).toEqual([
      { between: ['paper', 'table'], friction: 0.45 },
      { between: ['foam', 'paper'], friction: 0.6 },
    ]);
  });

  it('challenge and class of version 2', () => {
    expect(keptFile('challenge', 2).slackMm).toBe(1.5);
    expect(keptFile('class', 2).challenges.map(({ slackMm }) => slackMm)).toEqual([2]);
  });

  it('attempt of version 2', () => {
    const { layout } = keptFile('attempt', 2);
    expect(layout.kind === 'laid-out' && layout.pieces.map(({ held, weighed }) => [held, weighed])).toEqual([
      ['taped', undefined],
      [undefined, { massG: 23.5, centreMm: 31 }],
    ]);
  });

  it('report of version 2', () => {
    const { stability } = keptFile('report', 2);
    expect(stability).toMatchObject({
      verdict: 'not-predicted',
      stands: false,
      slidesAt: { tiltRad: 0.5, direction: [0.6, 0.8] },
      first: [{ pieces: [1, 2, 3, 4], on: 0 }],
      notPredicted: [{ piece: 3, why: 'glued' }],
      closedGaps: [{ upper: 2, lower: 'table', gapMm: 1.5 }],
      mend: { piece: 1, side: 'left', byMm: 14 },
    });
  });

  it('of version 2 say what was usual then of fallen builds, own results and supply', () => {
    const { fallen, own, supply, hidden, labels } = keptFile('challenge', 2);
    expect([fallen, supply, hidden, labels]).toEqual([{ counts: 'out' }, null, [], []]);
    expect(own).toEqual({ pi: 'key', closeShare: 0.05, rewards: [] });
    expect(keptFile('attempt', 2)).toMatchObject({ answers: { 'no-tape': { kept: true } }, own: [] });
    expect(keptFile('class', 2).supplies).toEqual({});
    const { facts, requirements } = keptFile('report', 2);
    expect(facts.every(({ errors }) => Object.keys(errors).length === 0)).toBe(true);
    expect(requirements.map(({ breaches, note }) => [breaches, note])).toEqual([
      [[], null],
      [[], null],
    ]);
  });

  it('challenge of version 3', () => {
    const { fallen, own, supply, hidden, labels, requirements } = keptFile('challenge', 3);
    expect(fallen).toEqual({ counts: 'points', points: -2.5 });
    expect(own).toEqual({ pi: '22/7', closeShare: 0.07, rewards: [{ measure: 'volume', points: 3 }] });
    expect(supply).toEqual({ ends: { kind: 'turns', turns: 7 }, handOver: 'once-it-lies', dropped: 'lost-this-turn' });
    expect([hidden, labels]).toEqual([
      ['paper', 'curved-edges'],
      ['3.MD.D.8', 'our own label'],
    ]);
    expect(requirements.slice(-2).map(({ kind, consequence }) => [kind, consequence.kind])).toEqual([
      ['only-kinds', 'earns'],
      ['only-earned', 'costs'],
    ]);
  });

  it('attempt and class of version 3', () => {
    const { answers, own } = keptFile('attempt', 3);
    expect(answers['no-tape']).toEqual({ kept: true, note: 'One strip came off by itself.' });
    expect(own.map(({ measure, value }) => [measure, value])).toEqual([
      ['volume', 71000],
      ['faces', 7],
    ]);
    const [strokes] = Object.values(keptFile('class', 3).supplies);
    expect(strokes?.map(({ what, round, carrier, takenBack }) => [what.kind, round, carrier, takenBack])).toEqual([
      ['earned', 1, 'Ada', undefined],
      ['lost', undefined, undefined, undefined],
      ['penalty', undefined, undefined, true],
    ]);
  });

  it('report of version 3', () => {
    const { facts, own, supply, requirements } = keptFile('report', 3);
    expect(facts[1]?.errors).toEqual({ 'drum/height': -2.25, 'wedge/a': 31.5 });
    expect(own.map(({ verdict, slip }) => [verdict, slip])).toEqual([['close', 'other-pi']]);
    expect(supply).toMatchObject({ pieces: { wedge: 2 }, lost: 1, byCarrier: [{ carrier: 'Ada', pieces: 3 }] });
    expect(requirements.at(-1)?.breaches).toEqual([{ kind: 'ball', used: 2, allowed: 0 }]);
  });

  it('of version 3 say that own results were held against the drawing, and keep their points', () => {
    const { own, points, total } = keptFile('report', 3);
    expect(own.map(({ source }) => source)).toEqual(['predicted']);
    expect([points.map((line) => line.points), total]).toEqual([[18, 7], 18 + 7 - 1.5]);
  });

  it('report of version 4', () => {
    const { own, points, total } = keptFile('report', 4);
    expect([points.map((line) => line.points), total]).toEqual([[18, null, 7], null]);
    expect(own.map(({ measure, source, verdict }) => [measure, source, verdict])).toEqual([
      ['volume', 'predicted', 'close'],
      ['height', 'observed', 'agrees'],
      ['paper', null, 'not-measured'],
    ]);
  });

  it('kit, challenge and class of their next versions say which pieces are crushed', () => {
    const crushed = ({ kinds }: Kit) => kinds.map((kind) => [kind.stock, kind.crushed]);
    expect(crushed(keptFile('kit', 3))).toEqual([
      [7, undefined],
      [5, 2],
      [3, undefined],
    ]);
    expect(crushed(keptFile('challenge', 4).kit)[1]).toEqual([5, 2]);
    expect(keptFile('class', 4).challenges.map(({ kit }) => crushed(kit)[1])).toEqual([[5, 2]]);
  });

  it('of versions without crushed pieces have none of them', () => {
    expect(keptFile('kit', 2).kinds.map(({ crushed }) => crushed)).toEqual([undefined, undefined, undefined]);
  });

  it('attempt of version 4, class of version 5: what was laid out on photos says so', () => {
    const traced = ({ layout }: Attempt): boolean => layout.kind === 'laid-out' && layout.traced === true;
    expect(traced(keptFile('attempt', 4))).toBe(true);
    expect(traced(keptFile('attempt', 3))).toBe(false);
    expect(keptFile('class', 5).attempts.map(traced)).toEqual([true, false, false, false, false]);
  });

  it('challenge of version 5, class of version 6: whether groups are told how near they come to the best', () => {
    expect([keptFile('challenge', 5).bestShown, keptFile('challenge', 4).bestShown]).toEqual([true, undefined]);
    expect(keptFile('class', 6).challenges.map(({ bestShown }) => bestShown)).toEqual([true]);
  });
});
