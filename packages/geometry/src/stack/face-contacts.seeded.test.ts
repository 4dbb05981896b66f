// Face contacts of square-set boxes against the overlap of their sides, interval by interval; mm, mm2.

import { expect, it } from 'vitest';
import { seeded } from '../../../../tests/reference/seeded.ts';
import { box, put, solidsOf, stackOf } from '../../../../tests/reference/stacked-builds.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { PlacedPiece } from './types.ts';

const SEED = 733;

interface Block {
  readonly low: readonly number[];
  readonly high: readonly number[];
}

it(`boxes at whole centimetres, in quarter turns (seed ${SEED})`, () => {
  const draw = seeded(SEED);
  const whole = (low: number, high: number): number => low + Math.floor(draw() * (high - low + 1));
  const solids = solidsOf({ brick: box(30, 50, 70), tile: box(60, 40, 10), post: box(20, 20, 90) });
  let contacts = 0;
  for (let build = 0; build < share(300, 40); build++) {
    const pieces = Array.from({ length: whole(2, 25) }, () => {
      const kind = ['brick', 'tile', 'post'][whole(0, 2)] ?? '';
      const resting = ['base', 'long-side', 'short-side'][whole(0, 2)] ?? '';
      return put(kind, 10 * whole(-8, 8), 10 * whole(-8, 8), { resting, turnRad: (whole(0, 3) * Math.PI) / 2 });
    });
    const stack = stackOf(pieces, solids);
    const blocks = stack.pieces.map(blockOf);
    for (const [second, b] of blocks.entries()) {
      expectNear(areaOf(stack, second, 'table'), b.low[2] === 0 ? shared(b, b, [0, 1]) : 0, NEAR);
      for (const [first, a] of blocks.slice(0, second).entries()) {
        const area = sideContact(a, b);
        if (area > 0) contacts++;
        expectNear(areaOf(stack, first, second), area, NEAR, `build ${build}, pieces ${first} and ${second}`);
      }
    }
  }
  expect(contacts).toBeGreaterThan(100);
});

const NEAR = { absolute: 1e-9 };

const areaOf = (stack: ReturnType<typeof stackOf>, first: number, second: number | 'table'): number =>
  stack.faceContacts
    .filter((one) => one.first === first && one.second === second)
    .reduce((total, { areaMm2 }) => total + areaMm2, 0);

/** The box of a piece, rounded to the whole millimetres on which all corners lie. */
function blockOf({ body }: PlacedPiece): Block {
  const corners = body.flatMap((part) => (part.kind === 'points' ? part.points : []));
  const along = (k: 0 | 1 | 2): number[] => corners.map((corner) => Math.round(corner[k]));
  const axes = [along(0), along(1), along(2)];
  return { low: axes.map((values) => Math.min(...values)), high: axes.map((values) => Math.max(...values)) };
}

/** The area on which two boxes touch, along whichever axis they do. */
function sideContact(a: Block, b: Block): number {
  return [0, 1, 2].reduce((total, axis) => {
    const touch = a.high[axis] === b.low[axis] || b.high[axis] === a.low[axis];
    return touch
      ? total +
          shared(
            a,
            b,
            [0, 1, 2].filter((other) => other !== axis),
          )
      : total;
  }, 0);
}

function shared(a: Block, b: Block, axes: readonly number[]): number {
  return axes.reduce((area, k) => {
    const width = Math.min(a.high[k] ?? 0, b.high[k] ?? 0) - Math.max(a.low[k] ?? 0, b.low[k] ?? 0);
    return area * Math.max(0, width);
  }, 1);
}
