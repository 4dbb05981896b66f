import { expect, it } from 'vitest';
import { doubtOf } from './doubts.ts';

const CONE = { solid: 'cone', sizes: { radius: 30, height: 40 } } as const;
const CYLINDER = { solid: 'cylinder', sizes: { diameter: 50, height: 80 } } as const;
const PYRAMID = { solid: 'regular-pyramid', sizes: { sides: 4, edge: 60, height: 40 } } as const;

it('a height that is as long as the slope is asked about', () => {
  // 3, 4, 5: the slope of this cone is 50.
  expect(doubtOf(CONE, 'height', 50)).toMatchObject({ code: 'slope', meantMm: 40, way: { name: 'slant' } });
  expect(doubtOf(CONE, 'height', 51)).toMatchObject({ code: 'slope', meantMm: Math.sqrt(51 ** 2 - 30 ** 2) });
  expect(doubtOf(CONE, 'height', 52)).toBeNull();
  expect(doubtOf(PYRAMID, 'height', 50)).toMatchObject({ code: 'slope', way: { name: 'slant' } });
  // Along the edge from a corner: √(40² + 2 · 30²) = 58.3.
  expect(doubtOf(PYRAMID, 'height', 58)).toMatchObject({ code: 'slope', way: { name: 'slantEdge' } });
});

it('a radius that is a diameter is asked about, and the other way round', () => {
  expect(doubtOf(CONE, 'radius', 60)).toMatchObject({ code: 'across', meantMm: 30 });
  expect(doubtOf(CYLINDER, 'diameter', 25)).toMatchObject({ code: 'half', meantMm: 50 });
  expect(doubtOf(CYLINDER, 'height', 40)).toBeNull();
});

it('ten times as much is asked about', () => {
  expect(doubtOf(CYLINDER, 'height', 795)).toMatchObject({ code: 'ten-times', meantMm: 79.5 });
  expect(doubtOf(CYLINDER, 'height', 700)).toBeNull();
});

it('a reading that is a little off, or the same, is taken as it is', () => {
  expect(doubtOf(CONE, 'height', 41)).toBeNull();
  // A flat cone: its slope and its height read alike.
  expect(doubtOf({ solid: 'cone', sizes: { radius: 3, height: 80 } }, 'height', 80.1)).toBeNull();
  expect(doubtOf({ solid: 'cube', sizes: { edge: 50 } }, 'edge', 100)).toBeNull();
});
