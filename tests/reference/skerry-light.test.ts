// The demo class, told from its layouts by hand: every height is a sum of the heights of five pieces, every courtyard and
// perimeter that of a rectangle or two. Lengths mm, areas mm2.

import { readFileSync } from 'node:fs';
import { demoClass, demoText } from '@cairnmark/demo';
import type { ClassScore, Report } from '@cairnmark/engine';
import { scoreClass } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../tools/within.ts';
import { STATICS } from './small-class.ts';

const record = demoClass();
const score = scored();

describe('Skerry Light, the file', () => {
  it('is written as every class file is, and marked as invented', () => {
    const file = readFileSync(new URL('../../packages/demo/src/skerry-light.json', import.meta.url), 'utf8');
    expect(demoText).toBe(file);
    expect(encode('class', record)).toBe(file);
    expect(record.invented).toBe(true);
  });

  it('uses no more pieces than the box has', () => {
    expect(reportsOf('tall-light', 'narrow-rock', 'harbour-wall').flatMap((report) => report.stockBreaches)).toEqual(
      [],
    );
  });
});

describe('Skerry Light, what each build measures', () => {
  // Heights on the resting face: cylinder and prisms 80, cuboid on its short side 80, cube 50, frustum 50 (the Gannets'
  // own: 49), pyramid 60; regular solids: octahedron sqrt(2/3) 50, tetrahedron sqrt(2/3) 70, dodecahedron 2.22703 x 30.
  const SLOPE = Math.sqrt(2 / 3);
  it.each([
    ['tall-light-puffins-0920', 50 + 50 + 80 + 50 + SLOPE * 50, 2500],
    ['tall-light-terns-0923', 80 + 80 + 80 + 50 + 60, 1.5 * Math.sqrt(3) * 900],
    ['tall-light-gannets-0926', 80 + 80 + 80 + 49 + 60, 1.5 * Math.sqrt(3) * 900],
    ['tall-light-fulmars-0929', 80 + 80 + 80 + 50 + SLOPE * 70, 1.5 * Math.sqrt(3) * 900],
    ['tall-light-petrels-0932', 80 + 80 + 50 + 50 + 60, Math.PI * 625],
    ['tall-light-eiders-0935', 50 + 30 + 80 + 80 + 60, 2500],
    ['tall-light-puffins-0941', 80 + 80 + 80 + 80 + 60, 1.5 * Math.sqrt(3) * 900],
    ['narrow-rock-puffins-1012', 80 + 80 + 80 + 50 + 60, Math.PI * 625],
    ['narrow-rock-terns-1015', 80 + 80 + 80 + 80 + 60, (Math.sqrt(3) / 4) * 2500],
    ['narrow-rock-gannets-1018', 80 + 80 + 80 + 80 + 60, 1.5 * Math.sqrt(3) * 900],
    ['narrow-rock-fulmars-1021', 80 + 50 + 50 + 50 + 2.22703 * 30, Math.PI * 625],
    ['narrow-rock-petrels-1024', 80 + 80 + 50 + 50 + SLOPE * 70, 50 * 30],
    ['narrow-rock-eiders-1027', 50 + 80 + 80 + 80 + 60, 2500],
  ])('%s: height and base', (attempt, heightMm, baseMm2) => {
    // The height of the dodecahedron is printed to six digits.
    expectNear(predicted(attempt, 'height'), heightMm, { absolute: 1e-3 });
    expectNear(predicted(attempt, 'base-area'), baseMm2, { relative: 1e-9 });
  });

  it.each([
    // Rectangle 130 x 180 round a yard of 50 x 80.
    ['harbour-wall-terns-1112', 50 * 80, 2 * (130 + 180)],
    // Eight cuboids round a square yard: 210 outside, 110 inside.
    ['harbour-wall-gannets-1116', 110 * 110, 4 * 210],
    // Not closed. From the south-west corner: south side, south-east cube, east wall in its notch, north-east cube; through
    // the gap, inside of the east wall, prism, west wall and north wall; back through the gap, north wall, west side.
    [
      'harbour-wall-eiders-1128',
      0,
      180 +
        50 +
        (10 + 80 + 16) +
        (50 + 50 + 50) +
        (4 + 80 + 10) +
        80 +
        (10 + 80 + 10) +
        (10 + 80) +
        30 +
        (80 + 10 + 50) +
        (50 + 10 + 80 + 10 + 50),
    ],
    // Rectangle 130 x 260 round 70 x 160; a cone of radius 30 juts 5 over two outer sides, and into the yard.
    ['harbour-wall-fulmars-1120', 70 * 160 - overDisc(5, Math.sqrt(275), 25), 2 * (130 + 260) + 2 * bulge()],
    // Square yard 80 with four recesses 80 x 10, one of them 1.5 longer; two cones bite off the ends of two each.
    ['harbour-wall-puffins-1108', 80 * 120 + 15 - 4 * overDisc(25, Math.sqrt(675), 15), null],
  ])('%s: courtyard and perimeter', (attempt, yardMm2, perimeterMm) => {
    expectNear(predicted(attempt, 'courtyard-area'), yardMm2, { absolute: 1e-6 });
    if (perimeterMm !== null) expectNear(predicted(attempt, 'footprint-perimeter'), perimeterMm, { absolute: 1e-6 });
  });

  it('tells the gap of 1.5 mm that counts as closed, and no other', () => {
    const gaps = reportsOf('harbour-wall').map((report) => report.gaps.map(({ widthMm }) => widthMm));
    expect(gaps).toEqual([[1.5], [], [], [], [], []]);
  });
});

describe('Skerry Light, the boards', () => {
  it('Tall Light: the second attempt of the Puffins, a tie, a near tie, a decision, a fall', () => {
    expect(board('tall-light')).toEqual([
      ['puffins', 1, [379], []],
      ['gannets', 2, [349], ['fulmars']],
      ['terns', 2, [349], ['fulmars']],
      ['fulmars', 4, [347], ['gannets', 'terns']],
      ['petrels', 5, [320], []],
      ['eiders', null, [300], []],
    ]);
    expect(outOf('tall-light', 'eiders')).toEqual([{ code: 'fell' }]);
  });

  it('Narrow Rock: a tie that the smaller base breaks, and a base too large', () => {
    expect(board('narrow-rock')).toEqual([
      ['terns', 1, [379, 1083], ['gannets']],
      ['gannets', 2, [379, 2338], ['terns']],
      ['puffins', 3, [350, 1963], []],
      ['petrels', 4, [317, 1500], []],
      ['fulmars', 5, [296, 1963], []],
      ['eiders', null, [351, 2500], []],
    ]);
    expect(outOf('narrow-rock', 'eiders')).toEqual([{ code: 'rule-broken', requirements: ['base-on-the-rock'] }]);
  });

  it('Harbour Wall: points row by row, a rule that costs, a group that is absent', () => {
    // Courtyard, perimeter, volume, idea, craft; the Eiders pay 5 for a seventeenth piece.
    expect(
      reportsOf('harbour-wall').map(({ group, points, total }) => [group, points.map((line) => line.points), total]),
    ).toEqual([
      ['puffins', [18, 8, 13, 7, 6], 52],
      ['terns', [8, 6, 7, 7, 8], 36],
      ['gannets', [24, 8, 10, 5, 6], 53],
      ['fulmars', [22, 7, 12, 7, 6], 54],
      ['petrels', [], null],
      ['eiders', [0, 12, 17, 6, 4], 39 - 5],
    ]);
    // Near: the courtyards of the Gannets, 121 cm2, and of the Terns, 40 cm2, may be less than 120 and 40, and give 2 points
    // less. Nothing of the Fulmars is as near to a step below it, nor of the Gannets to one above.
    expect(board('harbour-wall').map(([group, place, , near]) => [group, place, near])).toEqual([
      ['fulmars', 1, []],
      ['gannets', 2, ['puffins']],
      ['puffins', 3, ['gannets']],
      ['terns', 4, ['eiders']],
      ['eiders', 5, ['terns']],
      ['petrels', null, []],
    ]);
    expect(outOf('harbour-wall', 'petrels')).toEqual([{ code: 'absent' }]);
  });

  it('the day: the Gannets win it without winning a challenge', () => {
    // A missing result is never 0: who lacks one takes no place.
    expect(score.day.map(({ group, place, total }) => [group, place, total])).toEqual([
      ['gannets', 1, 5 + 5 + 5],
      ['puffins', 2, 6 + 4 + 4],
      ['terns', 2, 5 + 6 + 3],
      ['fulmars', 4, 3 + 2 + 6],
      ['eiders', null, null],
      ['petrels', null, null],
    ]);
  });
});

function scored(): ClassScore {
  const result = scoreClass(record, STATICS);
  if (!result.ok) throw new RangeError(JSON.stringify(result.issues));
  return result.value;
}

function reportsOf(...challenges: readonly string[]): readonly Report[] {
  return challenges.flatMap((challenge) => score.reports.get(challenge) ?? []);
}

function predicted(attempt: string, measure: string): number {
  const reports = reportsOf('tall-light', 'narrow-rock', 'harbour-wall');
  const fact = reports.find((report) => report.attempt === attempt)?.facts.find(({ id }) => id === measure)?.predicted;
  return fact?.status === 'measured' ? fact.value : Number.NaN;
}

/** Group, place, the values that decided it, and the groups within measuring error. */
function board(challenge: string) {
  const standings = score.standings.get(challenge) ?? [];
  return standings.map(({ group, place, decidedBy, withinErrorOf }) => [
    group,
    place,
    decidedBy.map(({ value }) => value),
    [...withinErrorOf].sort(),
  ]);
}

function outOf(challenge: string, group: string) {
  return score.standings.get(challenge)?.find((standing) => standing.group === group)?.out;
}

/** Area of a disc of radius 30 beyond the line at `depth` from its centre, between `from` and `to` along that line. */
function overDisc(from: number, to: number, depth: number): number {
  const under = (u: number) => (u * Math.sqrt(900 - u * u)) / 2 + 450 * Math.asin(u / 30);
  return under(to) - under(from) - depth * (to - from);
}

/** By how much the arc of a disc of radius 30 beyond a line at 25 from its centre is longer than its chord. */
function bulge(): number {
  return 2 * 30 * Math.acos(25 / 30) - 2 * Math.sqrt(275);
}
