// The drop of single pairs and the stacking of whole builds, in microseconds; and how the cost grows with the build.

import type { LaidPiece } from '@cairnmark/geometry';
import { buildStack, dropHeight } from '@cairnmark/geometry';
import { ball, box, cone, cylinder, flipped, moved } from '../reference/bodies.ts';
import * as builds from '../reference/stacked-builds.ts';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'drop and stack';

const SOLIDS = builds.solidsOf({
  cube: builds.cube(50),
  lintel: builds.box(120, 50, 20),
  drum: builds.cylinder(25, 60),
  ball: builds.sphere(25),
});

/** Spots on squared paper, 60 mm apart, three pieces on each: two cubes and a drum, every fourth time under a lintel. */
function village(pieces: number): readonly LaidPiece[] {
  const side = Math.ceil(Math.sqrt(pieces / 3));
  return Array.from({ length: pieces }, (_, k) => {
    const spot = Math.floor(k / 3);
    const kind = k % 3 === 2 ? (spot % 4 === 0 ? 'lintel' : 'drum') : 'cube';
    return builds.put(kind, 60 * (spot % side) - 30 * side, 60 * Math.floor(spot / side) - 30 * side, {
      turnRad: 0.01,
    });
  });
}

const tower = (pieces: number): readonly LaidPiece[] =>
  Array.from({ length: pieces }, (_, k) => builds.put('cube', k % 2, 0, { turnRad: 0.3 * k }));

export async function run(report: Report): Promise<void> {
  const pairs = {
    'box on box': () => dropHeight(moved(box(30, 50, 70), 12, 21), box(40, 40, 40)) ?? 0,
    'cylinder on box': () => dropHeight(moved(cylinder(30, 50), 12, 21), box(40, 40, 40)) ?? 0,
    'ball on ball': () => dropHeight(moved(ball(50), 20, 10), ball(30)) ?? 0,
    'tip on slope': () => dropHeight(moved(flipped(cone(30, 70), 70), 5, 2), cone(50, 40)) ?? 0,
  };
  for (const [label, ms] of Object.entries(interleave(pairs, 9))) {
    report({ label, value: 1000 * ms, unit: 'us', target: label === 'box on box' ? 'under 10' : '' });
  }
  const stacks = {
    'village of 30': () => buildStack(village(30), SOLIDS, 0),
    'village of 300': () => buildStack(village(300), SOLIDS, 0),
    'village of 3 000': () => buildStack(village(3000), SOLIDS, 0),
    'tower of 300': () => buildStack(tower(300), SOLIDS, 0),
    'tower of 3 000': () => buildStack(tower(3000), SOLIDS, 0),
  };
  const times = interleave(stacks, 3);
  for (const [label, ms] of Object.entries(times)) report({ label, value: ms, unit: 'ms' });
  report({
    label: 'village, ten times the pieces',
    value: times['village of 3 000'] / times['village of 300'],
    unit: 'x',
    target: 'about 10',
  });
}
