// The check of closed surfaces finds what is not closed.

import type { Vec3 } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import type { Triangle } from '../mesh-integrals.ts';
import { checkClosed } from './closed.ts';

const [O, A, B, C]: readonly [Vec3, Vec3, Vec3, Vec3] = [
  [0, 0, 0],
  [3, 0, 0],
  [0, 5, 0],
  [0, 0, 7],
];
const CLOSED: readonly [Triangle, ...Triangle[]] = [
  [O, B, A],
  [O, A, C],
  [O, C, B],
  [A, B, C],
];
const [first, ...others] = CLOSED;

it('a tetrahedron is closed', () => expect(() => checkClosed(CLOSED)).not.toThrow());

it.each<readonly [string, readonly Triangle[]]>([
  ['nothing', []],
  ['a face too few', others],
  ['a face turned inward', [[first[0], first[2], first[1]], ...others]],
  ['a face twice', [first, ...CLOSED]],
  ['a corner moved by the least', [[[0, 0, 1e-9], first[1], first[2]], ...others]],
])('%s is not', (_, triangles) => expect(() => checkClosed(triangles)).toThrow());
