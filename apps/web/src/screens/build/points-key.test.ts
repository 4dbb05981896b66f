import type { Report, ReportedFact } from '@cairnmark/engine';
import type { Stability } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { pointsKey } from './points-key.ts';

const CHALLENGE = {
  points: [{ id: 'height', measure: 'height', points: 1, per: 10, rounding: 'down' as const }],
};
const report = (
  source: ReportedFact['source'],
  verdict: Stability['verdict'] = 'steady',
  id = 'height',
): Pick<Report, 'stability' | 'facts'> => ({
  stability: { verdict, stands: verdict !== 'falls' } as Stability,
  facts: [{ id, source } as ReportedFact],
});

it('points of the drawing are points now, or if it stands', () => {
  expect(pointsKey(report('predicted'), CHALLENGE)).toBe('read.points-now');
  expect(pointsKey(report('predicted', 'falls'), CHALLENGE)).toBe('read.points-if');
});

it('a build that rolls at a touch has no points for certain', () => {
  expect(pointsKey(report('predicted', 'rolls-at-a-touch'), CHALLENGE)).toBe('read.points-if');
});

it('points of a height that was measured or decided say so, as they may differ from the drawing', () => {
  expect(pointsKey(report('observed'), CHALLENGE)).toBe('read.points-real');
  expect(pointsKey(report('decided', 'falls'), CHALLENGE)).toBe('read.points-real');
});

it('a measure that earns nothing does not matter', () => {
  expect(pointsKey(report('observed', 'steady', 'volume'), CHALLENGE)).toBe('read.points-now');
});
