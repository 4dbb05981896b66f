// The simulation itself, on builds worked out by hand. Pushes are tangents of the tilt; mm.

import type { LaidPiece, SolidSpec, Vec2 } from '@cairnmark/geometry';
import { massOf, noTabs } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { times } from '../dice.ts';
import { FULL } from '../judged-builds.ts';
import { box, cube, cylinder, put, solidsOf, stackOf } from '../stacked-builds.ts';
import type { Build } from './bodies.ts';
import { LEFT_MM, LEFT_RAD, simulate } from './world.ts';

const LEVEL: Vec2 = [0, 0];

const build = (
  specs: Readonly<Record<string, SolidSpec>>,
  friction: number,
  ...pieces: readonly LaidPiece[]
): Build => ({
  stack: stackOf(pieces, solidsOf(specs)),
  massOf: ({ solid }) => massOf(solid, FULL, noTabs),
  frictionOf: (touching) => (touching === 'table' ? 0.9 : friction),
});

it('a cube slides where the push passes the smaller friction of the two', () => {
  const alone = build({ cube: cube(40) }, 0.4, put('cube', 3, 5));
  expect(simulate(alone, [0, 0.39]).leftItsPose).toBe(false);
  expect(simulate(alone, [0, 0.41]).leftItsPose).toBe(true);
});

it('a box of 20 x 30 x 100 tips at 10/50 along its width and at 15/50 along its depth', () => {
  const alone = build({ box: box(20, 30, 100) }, 0.8, put('box', 0, 0));
  expect(simulate(alone, [0.19, 0]).leftItsPose).toBe(false);
  expect(simulate(alone, [0.21, 0]).leftItsPose).toBe(true);
  expect(simulate(alone, [0, 0.29]).leftItsPose).toBe(false);
  expect(simulate(alone, [0, 0.31]).leftItsPose).toBe(true);
});

it('a drum of radius 20 and height 100 tips at 20/50, less 3.5 % for its twelve corners', () => {
  const alone = build({ drum: cylinder(20, 100) }, 0.8, put('drum', 0, 0));
  const [x, y] = [Math.cos(Math.PI / 12), Math.sin(Math.PI / 12)];
  for (const push of [0.375, 0.41]) expect(simulate(alone, [push * x, push * y]).leftItsPose).toBe(push > 0.4);
});

it('a brick of length 80 stands 39 out over another and falls at 41', () => {
  const two = (out: number): Build => build({ brick: box(80, 50, 30) }, 0.4, put('brick', 0, 0), put('brick', out, 0));
  expect(simulate(two(39), LEVEL).leftItsPose).toBe(false);
  expect(simulate(two(41), LEVEL).leftItsPose).toBe(true);
});

it('a contact of eight corners carries to all of them: a pillar of height 120 tips over its octagon at 20/60', () => {
  const specs = { foot: cube(40), pillar: box(40, 40, 120) };
  const turned = build(specs, 0.8, put('foot', 0, 0), put('pillar', 0, 0, { turnRad: Math.PI / 4 }));
  // The foot is as of lead, so that it stays where it is.
  const leaden: Build = {
    ...turned,
    massOf: (piece) => ({ ...turned.massOf(piece), massG: piece.kind === 'foot' ? 3000 : 90 }),
  };
  expect(simulate(leaden, [0.3, 0]).leftItsPose).toBe(false);
  expect(simulate(leaden, [0.35, 0]).leftItsPose).toBe(true);
});

it.each([
  ['blocks', box(50, 30, 40)],
  ['lintels', box(130, 30, 15)],
  ['drums', cylinder(20, 40)],
])('%s exactly on each other, edge over edge, are not kicked aside', (_, spec) => {
  const pile = build({ it: spec }, 0.4, ...times(2, () => put('it', 0, 0)));
  expect(simulate(pile, LEVEL).leftItsPose).toBe(false);
});

it('a lintel with its middle between two pillars stands, past one of them it falls', () => {
  const specs = { pillar: box(30, 30, 60), lintel: box(150, 30, 20) };
  const gate = (at: number): Build =>
    build(specs, 0.4, put('pillar', -50, 0), put('pillar', 50, 0), put('lintel', at, 0));
  expect(simulate(gate(62), LEVEL).leftItsPose).toBe(false);
  expect(simulate(gate(67), LEVEL).leftItsPose).toBe(true);
});

it('a tower of eight turned cubes settles by far less than counts as leaving its pose', () => {
  const tower = build({ cube: cube(40) }, 0.4, ...times(8, (k) => put('cube', k % 3, k % 2, { turnRad: 0.3 * k })));
  const { movedMm, turnedRad } = simulate(tower, LEVEL);
  expect(movedMm).toBeLessThan(LEFT_MM / 4);
  expect(turnedRad).toBeLessThan(LEFT_RAD / 4);
  expect(movedMm + turnedRad).toBeGreaterThan(0);
});

it('the same build moves alike every time', () => {
  const falling = build({ brick: box(80, 50, 30) }, 0.4, put('brick', 0, 0), put('brick', 45, 7, { turnRad: 0.3 }));
  expect(simulate(falling, LEVEL)).toEqual(simulate(falling, LEVEL));
});
