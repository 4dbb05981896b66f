// Gaps that count as closed: numbers by hand. A filled gap takes both facing sides from the perimeter and adds its mouths;
// a link adds its line twice; neither changes the area.

import { describe, expect, it } from 'vitest';
import {
  box,
  disc,
  moved,
  ngon,
  perimeterOf,
  polygon,
  shift,
  turn,
} from '../../../../tests/reference/outline-shapes.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import type { UnionFacts } from './union-facts.ts';
import { unionFacts } from './union-facts.ts';

/** Sums of a dozen lengths near 100 mm: their rounding. */
const LENGTH = { absolute: 1e-10 };

const withGaps = (outlines: Parameters<typeof unionFacts>[0], gapAllowanceMm: number): UnionFacts =>
  unionFacts(outlines, { contactMm: CONTACT_MM, gapAllowanceMm });

describe('two boxes of 50 side by side, 1 mm apart', () => {
  const boxes = [box(0, 0, 50, 50), box(51, 0, 50, 50)];

  it('are one part when 2 mm count as closed', () => {
    const facts = withGaps(boxes, 2);
    expectNear(facts.areaMm2, 5000, LENGTH);
    expectNear(facts.outerPerimeterMm, 200 + 200 - 2 * 50 + 2 * 1, LENGTH);
    expect([facts.parts, facts.holes, facts.gaps.length]).toEqual([1, 0, 1]);
    expectPointNear(facts.gaps[0]!.at, [50.5, 25], 1e-9);
    expectNear(facts.gaps[0]!.widthMm, 1, LENGTH);
  });

  it('are two when 0.05 mm do', () => {
    const facts = withGaps(boxes, CONTACT_MM);
    expectNear(facts.outerPerimeterMm, 400, LENGTH);
    expect([facts.parts, facts.gaps]).toEqual([2, []]);
  });

  it('are two when just less than the gap counts', () => {
    expect([withGaps(boxes, 0.999).parts, withGaps(boxes, 1.001).parts]).toEqual([2, 1]);
  });
});

it('a gap within a contact adds no mouths, and is not told', () => {
  const facts = withGaps([box(0, 0, 50, 30), box(50.03, 10, 40, 30)], CONTACT_MM);
  expectNear(facts.outerPerimeterMm, 160 + 140 - 2 * 20, LENGTH);
  expect([facts.parts, facts.gaps]).toEqual([1, []]);
});

it('boxes set off along a gap close it where they face each other', () => {
  const facts = withGaps([box(0, 0, 50, 30), box(51.5, 10, 40, 30)], 2);
  expectNear(facts.outerPerimeterMm, 160 + 140 - 2 * 20 + 2 * 1.5, LENGTH);
  expectPointNear(facts.gaps[0]!.at, [50.75, 20], 1e-9);
});

it('a wedge is closed up to where it is as wide as the allowance', () => {
  // The second box leans away from the corner (50, 0) by 0.05 rad: the gap is 2 mm wide, straight across, at 1 / tan 0.025 mm.
  const leaning = moved(moved(box(0, 0, 40, 50), turn(-0.05)), shift(50, 0));
  const along = 1 / Math.sin(0.025);
  const facts = withGaps([box(0, 0, 50, 50), leaning], 2);
  expectNear(facts.outerPerimeterMm, 200 + 180 - 2 * along + 2, LENGTH);
  expectNear(facts.gaps[0]!.widthMm, 2, LENGTH);
});

describe('a ring of boxes with one gap of 1.5 mm', () => {
  // Walls 10 thick round a yard of 40 by 20; the upper wall stops 1.5 mm short of the right one.
  const walls = [box(0, 0, 60, 10), box(0, 10, 10, 20), box(50, 10, 10, 20), box(0, 30, 48.5, 10), box(50, 30, 10, 10)];

  it('closes its courtyard when 2 mm count as closed', () => {
    const facts = withGaps(walls, 2);
    expectNear(facts.courtyardMm2, 40 * 20, LENGTH);
    expectNear(facts.outerPerimeterMm, 2 * (60 + 40), LENGTH);
    expectNear(facts.innerPerimeterMm, 2 * (40 + 20), LENGTH);
    expect([facts.parts, facts.holes, facts.gaps.length]).toEqual([1, 1, 1]);
    expectPointNear(facts.gaps[0]!.at, [49.25, 35], 1e-9);
    expectNear(facts.areaMm2, 60 * 40 - 40 * 20 - 15, LENGTH);
  });

  it('has none when 1 mm does', () => {
    const facts = withGaps(walls, 1);
    expectNear(facts.outerPerimeterMm, 2 * (60 + 40) + 2 * (40 + 20) - 2 * 1.5 + 2 * 10, LENGTH);
    expect([facts.parts, facts.holes, facts.courtyardMm2]).toEqual([1, 0, 0]);
  });
});

describe('discs', () => {
  it('1 mm apart are linked: the line between them counts on both sides', () => {
    const facts = withGaps([disc(0, 0, 25), disc(51, 0, 25)], 2);
    expectNear(facts.outerPerimeterMm, 100 * Math.PI + 2, LENGTH);
    expect(facts.parts).toBe(1);
    expectPointNear(facts.gaps[0]!.at, [25.5, 0], 1e-9);
  });

  it.each([0, 1e-9, 0.02, CONTACT_MM])('tangent to within a contact (%d mm) keep both their rims', (gap) => {
    const facts = withGaps([disc(0, 0, 25), disc(50 + gap, 0, 25)], 2);
    expectNear(facts.outerPerimeterMm, 100 * Math.PI, LENGTH);
    expect([facts.parts, facts.gaps]).toEqual([1, []]);
  });

  it('three round a hole close it by links', () => {
    const side = 52;
    const discs = [disc(0, 0, 25), disc(side, 0, 25), disc(side / 2, (side * Math.sqrt(3)) / 2, 25)];
    const facts = withGaps(discs, 3);
    // The triangle of the centres less three sixths of a disc; half a rim and three links bound it, five halves the outside.
    expectNear(facts.courtyardMm2, (side ** 2 * Math.sqrt(3)) / 4 - (25 ** 2 * Math.PI) / 2, LENGTH);
    expectNear(facts.innerPerimeterMm, 25 * Math.PI + 3 * 2, LENGTH);
    expectNear(facts.outerPerimeterMm, 125 * Math.PI + 3 * 2, LENGTH);
    expect(facts.gaps.length).toBe(3);
  });

  it('and a side: nothing of either drops', () => {
    const facts = withGaps([box(0, 0, 50, 30), disc(61.5, 13, 10)], 2);
    expectNear(facts.outerPerimeterMm, 160 + 20 * Math.PI + 2 * 1.5, LENGTH);
    expectPointNear(facts.gaps[0]!.at, [50.75, 13], 1e-9);
  });

  it('drawn as polygons of many sides are treated as the discs', () => {
    const [round, sides] = [ngon(0, 0, 25, 600, Math.PI / 600), ngon(51, 0, 25, 600, Math.PI / 600)];
    expectNear(withGaps([round, sides], 2).outerPerimeterMm, 100 * Math.PI + 2, { absolute: 0.002 });
    expectNear(withGaps([round, box(25.5, -30, 20, 60)], 2).outerPerimeterMm, 50 * Math.PI + 160 + 1, {
      absolute: 0.002,
    });
  });
});

it('a corner near a slanting side is linked', () => {
  const tilted = moved(
    moved(box(0, 0, 30, 30), turn(Math.PI / 4)),
    shift(51.2 + 15 * Math.SQRT2, 20 - 15 * Math.SQRT2),
  );
  const facts = withGaps([box(0, 0, 50, 50), tilted], 2);
  expectNear(facts.outerPerimeterMm, 200 + 120 + 2 * 1.2, LENGTH);
  expectPointNear(facts.gaps[0]!.at, [50.6, 20], 1e-9);
});

it('the crossing of gaps between four boxes is closed too', () => {
  const facts = withGaps([box(0, 0, 10, 10), box(11, 0, 10, 10), box(0, 11, 10, 10), box(11, 11, 10, 10)], 2);
  expectNear(facts.outerPerimeterMm, 8 * 10 + 4 * 1, LENGTH);
  expect([facts.holes, facts.innerPerimeterMm, facts.courtyardMm2, facts.gaps.length]).toEqual([0, 0, 0, 4]);
});

it('a hole narrower than the allowance is closed, and told', () => {
  // Three tangent discs of 3 mm enclose a hole of 4 A / P = 4 (sqrt 3 - pi / 2) 9 / 3 pi = 0.62 mm.
  const discs = [disc(0, 0, 3), disc(6, 0, 3), disc(3, 3 * Math.sqrt(3), 3)];
  expect([withGaps(discs, 0.5).holes, withGaps(discs, 2).holes]).toEqual([1, 0]);
  expectNear(withGaps(discs, 2).gaps[0]!.widthMm, (12 * (Math.sqrt(3) - Math.PI / 2)) / Math.PI, LENGTH);
});

it('a post in a gap is part of the filling', () => {
  const facts = withGaps([box(0, 0, 50, 30), box(51.5, 0, 50, 30), box(50.25, 10, 1, 5)], 2);
  expectNear(facts.outerPerimeterMm, 160 + 160 - 60 + 3, LENGTH);
  expect([facts.parts, facts.holes]).toEqual([1, 0]);
});

it('sides do not face each other through a third piece', () => {
  const facts = withGaps([box(0, 0, 50, 30), box(50.4, 0, 1, 30), box(51.8, 0, 50, 30)], 2);
  expectNear(facts.outerPerimeterMm, 160 + 62 + 160 - 4 * 30 + 4 * 0.4, LENGTH);
  expect(facts.gaps.map(({ widthMm }) => widthMm.toFixed(9))).toEqual(['0.400000000', '0.400000000']);
});

it('of links that would cross, the shortest are laid', () => {
  // Four pins whose tips are the corners of a square of 1 mm: its sides are laid, and what they enclose is closed.
  const pin = polygon([
    [0.5, 0.5],
    [20, 16],
    [16, 20],
  ]);
  const pins = [0, 1, 2, 3].map((quarter) => moved(pin, turn((quarter * Math.PI) / 2)));
  const facts = withGaps(pins, 2);
  const pinMm = 2 * Math.hypot(19.5, 15.5) + Math.hypot(4, 4);
  expectNear(facts.outerPerimeterMm, 4 * pinMm + 4 * 1, LENGTH);
  expect([facts.parts, facts.holes, facts.innerPerimeterMm]).toEqual([1, 0, 0]);
});

it('of two links that cross, one is laid', () => {
  // Tips A (0, 0), B (0.5, 0), C (1.3, 1.4), D (-0.8, 1.4) of four pins; C and D are 2.1 mm apart. AB, BC and DA are linked,
  // and one of AC and BD: the triangle that it makes is closed, and the way round goes along it once, along DA twice.
  const pins = [
    polygon([
      [0, 0],
      [-20, -31],
      [-17, -33],
    ]),
    polygon([
      [0.5, 0],
      [17.5, -33],
      [20.5, -31],
    ]),
    polygon([
      [1.3, 1.4],
      [23, 21],
      [21, 23],
    ]),
    polygon([
      [-0.8, 1.4],
      [-20.5, 23],
      [-22.5, 21],
    ]),
  ];
  const facts = withGaps(pins, 2);
  const [ab, bc, ac] = [0.5, Math.hypot(0.8, 1.4), Math.hypot(1.3, 1.4)];
  expectNear(
    facts.outerPerimeterMm,
    pins.reduce((sum, one) => sum + perimeterOf(one), 0) + ab + bc + 2 * bc + ac,
    LENGTH,
  );
  expect([facts.parts, facts.holes]).toEqual([1, 0]);
});

describe('traced in one stroke', () => {
  // A wall 10 thick round a yard of 20 by 20, open on the right for 1.5 mm.
  const fort = polygon([
    [0, 0],
    [40, 0],
    [40, 19.25],
    [30, 19.25],
    [30, 10],
    [10, 10],
    [10, 30],
    [30, 30],
    [30, 20.75],
    [40, 20.75],
    [40, 40],
    [0, 40],
  ]);

  it.each([0, 0.3])('a ring that nearly closes has a courtyard (turned %d rad)', (turnRad) => {
    const facts = withGaps([moved(fort, turn(turnRad))], 2);
    expectNear(facts.courtyardMm2, 400, LENGTH);
    expectNear(facts.outerPerimeterMm, 160, LENGTH);
    expectNear(facts.innerPerimeterMm, 80, LENGTH);
    expectNear(facts.areaMm2, 1600 - 400 - 15, LENGTH);
    expect([facts.parts, facts.holes, facts.gaps.length]).toEqual([1, 1, 1]);
    expectPointNear(facts.gaps[0]!.at, turn(turnRad)([35, 20]), 1e-9);
  });

  it('and has none when 1 mm counts', () => {
    const facts = withGaps([moved(fort, turn(0.3))], 1);
    expectNear(facts.outerPerimeterMm, 160 + 80 + 20 - 3, LENGTH);
    expect(facts.holes).toBe(0);
  });

  it('two halves that nearly meet at both ends', () => {
    const left = polygon([
      [0, 0],
      [20, 0],
      [20, 10],
      [10, 10],
      [10, 30],
      [20, 30],
      [20, 40],
      [0, 40],
    ]);
    const right = moved(left, ([x, y]) => [41 - x, 40 - y]);
    const facts = withGaps([left, right], 2);
    expectNear(facts.courtyardMm2, 21 * 20, LENGTH);
    expectNear(facts.outerPerimeterMm, 2 * (41 + 40), LENGTH);
    expect([facts.parts, facts.holes, facts.gaps.length]).toEqual([1, 1, 2]);
  });

  it.each([11, 14, 17, 20, 23])('a ring and a disc 1 mm off it have one link (%d mm up)', (y) => {
    // Turned, the ring is cut at 12.4, 13.1 and 33.1 mm: the disc is near several of its pieces.
    const turned = [fort, disc(-101, y, 100)].map((one) => moved(one, turn(0.3)));
    const facts = withGaps(turned, 1.2);
    expectNear(facts.outerPerimeterMm, 160 + 80 + 20 - 3 + 200 * Math.PI + 2, LENGTH);
    expect([facts.parts, facts.gaps.length]).toEqual([1, 1]);
  });
});
