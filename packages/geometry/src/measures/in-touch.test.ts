// Pieces that touch move together, by hand. mm of movement for each mm of a reading.

import { describe, expect, it } from 'vitest';
import { box, kit, laid, PLAIN, put } from '../../../../tests/reference/measured-builds.ts';
import { expectPointNear } from '../../../../tests/tools/within.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { LaidPiece } from '../stack/types.ts';
import { buildOf } from './build.ts';
import { contextOf } from './context.ts';
import type { Link } from './in-touch.ts';
import { driftOf, linksOf } from './in-touch.ts';

/** Rounding of sums of a few halves and thirds. */
const ROUNDING = 1e-15;

type Pair = readonly [number, number, Link['hold'], Vec2];

/** Both directions of each link between two pieces; the normal of one that carries does not count. */
function linked(count: number, ...pairs: readonly Pair[]): readonly (readonly Link[])[] {
  const links: Link[][] = Array.from({ length: count }, () => []);
  const link = (to: number, hold: Link['hold'], normal: Vec2): Link =>
    hold === 'carries' ? { to, hold } : { to, hold, normal };
  for (const [a, b, hold, normal] of pairs) {
    links[a]!.push(link(b, hold, normal));
    links[b]!.push(link(a, hold, [-normal[0], -normal[1]]));
  }
  return links;
}

function expectDrift(drift: readonly Vec2[], expected: readonly Vec2[]): void {
  expect(drift).toHaveLength(expected.length);
  for (const [piece, movement] of drift.entries())
    expectPointNear(movement, expected[piece]!, ROUNDING, `piece ${piece}`);
}

describe('driftOf', () => {
  it('spreads a row of three about its middle, each pushed by half of both neighbours', () => {
    // In the row 1 - 0 - 2 the pieces 0 and 2 grow by 0.5 to each side, piece 1 does not grow.
    const links = linked(3, [1, 0, 'pushes', [1, 0]], [0, 2, 'pushes', [1, 0]]);
    const drift = driftOf(links, (piece) => (piece === 1 ? 0 : 0.5));
    // From piece 1: 0 moves 0.5, 2 moves 0.5 + 1; the middle of 0, 0.5, 1.5 is 2/3.
    expectDrift(drift, [
      [0.5 - 2 / 3, 0],
      [-2 / 3, 0],
      [1.5 - 2 / 3, 0],
    ]);
  });

  it('carries what stands on a piece, and leaves others alone', () => {
    const links = linked(4, [0, 1, 'pushes', [0, 1]], [1, 2, 'carries', [0, 0]]);
    // 1 and, on it, 2 move by 1 from 0: about the middle of 0, 1, 1.
    expectDrift(
      driftOf(links, () => 0.5),
      [
        [0, -2 / 3],
        [0, 1 / 3],
        [0, 1 / 3],
        [0, 0],
      ],
    );
  });

  it('lets what pushes decide before what carries, and that before what only looks flush', () => {
    // 0 pushes 1 by 1 along x. 2 stands on 0 and is pushed by 1. 3 stands on 2 and looks flush with 0.
    const links = linked(
      4,
      [0, 3, 'looks-flush', [1, 0]],
      [0, 2, 'carries', [0, 0]],
      [0, 1, 'pushes', [1, 0]],
      [1, 2, 'pushes', [0, 1]],
      [2, 3, 'carries', [0, 0]],
    );
    // From 0: 1 at (1, 0), 2 at (1, 1), 3 with it; the middle is (3/4, 1/2).
    expectDrift(
      driftOf(links, () => 0.5),
      [
        [-0.75, -0.5],
        [0.25, -0.5],
        [0.25, 0.5],
        [0.25, 0.5],
      ],
    );
  });
});

/** The direction in which the first piece pushes its only neighbour. */
function pushOf([links]: readonly (readonly Link[])[]): Vec2 {
  const [link, ...others] = links ?? [];
  expect(others).toEqual([]);
  if (link?.hold !== 'pushes') throw new Error('it pushes nothing');
  return link.normal;
}

describe('linksOf', () => {
  const kinds = kit({
    brick: box(60, 40, 30),
    drum: { solid: 'cylinder', sizes: { radius: 25, height: 70 } },
    post: { solid: 'cylinder', sizes: { radius: 13, height: 20 } },
    tent: { solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } },
  });

  const linksIn = (pieces: readonly LaidPiece[]) => {
    const build = buildOf(laid(...pieces), kinds);
    const context = build.ok ? contextOf(build.value, PLAIN) : build;
    if (!context.ok || !context.value.stack.shown) throw new Error('refused');
    return linksOf(context.value.stack.value);
  };

  it('finds a brick, a drum beside it and a post beside the drum, along their common normals', () => {
    // Drum and brick: 30 + 25 along x. Post and drum: 38 along (3, 4) / 5.
    const links = linksIn([put('brick', 0, 0), put('drum', 55, 7), put('post', 55 + 22.8, 7 + 30.4)]);
    expect(links.map((each) => each.map(({ to, hold }) => [to, hold]))).toEqual([
      [[1, 'pushes']],
      [
        [0, 'pushes'],
        [2, 'pushes'],
      ],
      [[1, 'pushes']],
    ]);
    const normals = links[1]!.map((link) => (link.hold === 'carries' ? [] : link.normal));
    expectPointNear(normals[0]!, [-1, 0], ROUNDING);
    expectPointNear(normals[1]!, [0.6, 0.8], ROUNDING);
  });

  it('finds the corner of a brick that a drum touches, whichever was laid first', () => {
    // The drum stands 25 from the corner (30, 20), along (4, 3) / 5.
    const [brick, drum] = [put('brick', 0, 0), put('drum', 50, 35)];
    expectPointNear(pushOf(linksIn([brick, drum])), [0.8, 0.6], ROUNDING);
    expectPointNear(pushOf(linksIn([drum, brick])), [-0.8, -0.6], ROUNDING);
  });

  it('finds the side of a tent that a drum touches', () => {
    // Sides 30, 40, 50: the longest lies at the front, a third of its height of 24 from the centre.
    const links = linksIn([put('tent', 0, 0), put('drum', 3, -8 - 25)]);
    expectPointNear(pushOf(links), [0, -1], ROUNDING);
  });

  it('takes the direction between both sides where corners meet', () => {
    expectPointNear(
      pushOf(linksIn([put('brick', 0, 0), put('brick', 60, 40)])),
      [Math.SQRT1_2, Math.SQRT1_2],
      ROUNDING,
    );
  });

  it('tells what carries and what only looks flush from what pushes', () => {
    // A post (to x = 30) on a brick; beside both, two bricks on each other: the lower at the height of the first brick.
    const links = linksIn([put('brick', 0, 0), put('post', 17, 0), put('brick', 60, 0), put('brick', 60, 0)]);
    expect(links.map((each) => each.map(({ to, hold }) => [to, hold]))).toEqual([
      [
        [1, 'carries'],
        [2, 'pushes'],
        [3, 'looks-flush'],
      ],
      [
        [0, 'carries'],
        [2, 'looks-flush'],
        [3, 'pushes'],
      ],
      [
        [3, 'carries'],
        [1, 'looks-flush'],
        [0, 'pushes'],
      ],
      [
        [2, 'carries'],
        [1, 'pushes'],
        [0, 'looks-flush'],
      ],
    ]);
  });

  it('leaves pieces alone that are a millimetre apart', () => {
    expect(linksIn([put('brick', 0, 0), put('brick', 61, 0)])).toEqual([[], []]);
  });
});
