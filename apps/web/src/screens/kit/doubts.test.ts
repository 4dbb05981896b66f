import { expect, it } from 'vitest';
import { doubtOf } from './doubts.ts';

const CONE = { solid: 'cone', sizes: { radius: 30, height: 40 } } as const;
const CYLINDER = { solid: 'cylinder', sizes: { diameter: 50, height: 80 } } as const;
const PYRAMID = { solid: 'regular-pyramid', sizes: { sides: 4, edge: 60, height: 40 } } as const;

it('a height that is as long as the slope is asked about', () => {
  // 3, 4, 5: the slope of this cone is 50.
  expect(doubtOf(CONE, 'height', 50, 'cm')).toMatchObject({ code: 'slope', meantMm: 40, way: { name: 'slant' } });
  expect(doubtOf(CONE, 'height', 51, 'cm')).toMatchObject({ code: 'slope', meantMm: Math.sqrt(51 ** 2 - 30 ** 2) });
  expect(doubtOf(CONE, 'height', 52, 'cm')).toBeNull();
  expect(doubtOf(PYRAMID, 'height', 50, 'cm')).toMatchObject({ code: 'slope', way: { name: 'slant' } });
  // Along the edge from a corner: √(40² + 2 · 30²) = 58.3.
  expect(doubtOf(PYRAMID, 'height', 58, 'cm')).toMatchObject({ code: 'slope', way: { name: 'slantEdge' } });
});

it('a radius that is a diameter is asked about, and the other way round', () => {
  expect(doubtOf(CONE, 'radius', 60, 'cm')).toMatchObject({ code: 'across', meantMm: 30 });
  expect(doubtOf(CYLINDER, 'diameter', 25, 'cm')).toMatchObject({ code: 'half', meantMm: 50 });
  expect(doubtOf(CYLINDER, 'height', 40, 'cm')).toBeNull();
});

it('ten times as much is asked about', () => {
  expect(doubtOf(CYLINDER, 'height', 795, 'cm')).toMatchObject({ code: 'ten-times', meantMm: 79.5 });
  expect(doubtOf(CYLINDER, 'height', 700, 'cm')).toBeNull();
});

it('in inches, a number of mm is asked about, and ten times as much is none', () => {
  // 2 inches; 51 was read on the other side of the ruler.
  const cube = { solid: 'cube', sizes: { edge: 50.8 } } as const;
  expect(doubtOf(cube, 'edge', 51 * 25.4, 'in')).toMatchObject({ code: 'inch-times', meantMm: 51 });
  expect(doubtOf(cube, 'edge', 508, 'in')).toBeNull();
});

it('a reading that is a little off, or the same, is taken as it is', () => {
  expect(doubtOf(CONE, 'height', 41, 'cm')).toBeNull();
  // A flat cone: its slope and its height read alike.
  expect(doubtOf({ solid: 'cone', sizes: { radius: 3, height: 80 } }, 'height', 80.1, 'cm')).toBeNull();
  expect(doubtOf({ solid: 'cube', sizes: { edge: 50 } }, 'edge', 100, 'cm')).toBeNull();
});
