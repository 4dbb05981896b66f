// What is read back of builds worked out by hand. mm.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bench, benchOf, reached, run } from '../../../tests/reference/edited-builds.ts';
import { box, cube, cylinder, put, sphere } from '../../../tests/reference/stacked-builds.ts';
import { share } from '../../../tests/tools/share.ts';
import { turnOf } from './grid.ts';
import type { Reading } from './read-back.ts';
import { readBack } from './read-back.ts';
import type { Pieces } from './types.ts';

const over = benchOf(
  {
    cube: cube(50),
    post: box(20, 20, 50),
    slab: box(120, 40, 10),
    drum: cylinder(25, 30),
    ball: sphere(20),
    stub: { solid: 'rectangular-frustum', sizes: { length: 60, width: 60, topLength: 30, height: 40 } },
    pile: { solid: 'regular-pyramid', sizes: { sides: 4, edge: 60, height: 40 } },
  },
  9,
);

const SEED = 20261130;

function read(pieces: Pieces, slackMm = 0): readonly Reading[] {
  const back = readBack(pieces, { ...over, slackMm });
  if (!back.ok) throw new Error(JSON.stringify(back.issues));
  return back.value;
}
const last = (pieces: Pieces, slackMm = 0): Reading | undefined => read(pieces, slackMm).at(-1);

it('a piece on the table, from the middle of the table', () => {
  expect(last([put('cube', 3, -5, { turnRad: turnOf(15) })])).toEqual({
    index: 0,
    kind: 'cube',
    resting: 'base',
    degrees: 15,
    bottomMm: 0,
    topMm: 50,
    restsOn: ['table'],
    mainly: 'table',
    xMm: 3,
    yMm: -5,
    overEdge: null,
    beside: [],
  });
});

describe('on one piece', () => {
  it('off its middle and over its edge', () => {
    expect(last([put('cube', 10, 0), put('cube', 18, 3)])).toMatchObject({
      restsOn: [0],
      mainly: 0,
      xMm: 8,
      yMm: 3,
      bottomMm: 50,
      topMm: 100,
      overEdge: { mm: 8, side: 'right' },
    });
  });

  it('over no edge', () => {
    expect(last([put('cube', 0, 0), put('post', 14, -15)])?.overEdge).toBeNull();
  });

  it.each([
    ['left', -7, 2],
    ['right', 7, -2],
    ['back', 1, 7],
    ['front', 0, -7],
  ] as const)('over the edge on the %s', (side, xMm, yMm) => {
    expect(last([put('cube', 0, 0), put('cube', xMm, yMm)])?.overEdge).toEqual({ mm: 7, side });
  });

  it('corners over the edges of a turned one: half the diagonal less half an edge', () => {
    const corner = Math.round(100 * (25 * Math.SQRT2 - 25)) / 100;
    expect(last([put('cube', 0, 0), put('cube', 0, 0, { turnRad: turnOf(45) })])?.overEdge?.mm).toBe(corner);
    expect(last([put('cube', 0, 0, { turnRad: turnOf(45) }), put('cube', 0, 0)])?.overEdge?.mm).toBe(corner);
  });

  it('round on round: as far as the centres are apart; on a square the same along its sides', () => {
    expect(last([put('drum', 0, 0), put('drum', 3, -4)])?.overEdge).toEqual({ mm: 5, side: 'front' });
    expect(last([put('cube', 0, 0), put('drum', 3, -4)])?.overEdge).toEqual({ mm: 4, side: 'front' });
  });

  it('a square on a round one: its corner from the centre, less the radius', () => {
    expect(last([put('drum', 0, 0), put('cube', 0, 0)])?.overEdge?.mm).toBe(
      Math.round(100 * (25 * Math.SQRT2 - 25)) / 100,
    );
  });

  it('the edge of a frustum is that of its top; of a point it is the outline', () => {
    expect(last([put('stub', 0, 0), put('cube', 0, 0)])?.overEdge?.mm).toBe(10);
    expect(last([put('pile', 0, 0), put('cube', 0, 0)])?.overEdge).toBeNull();
  });
});

describe('on several pieces', () => {
  const pillars: Pieces = [put('post', -40, 0), put('post', 40, 0)];

  it('a lintel reaches over both together, by its ends and its sides', () => {
    expect(last([...pillars, put('slab', 1, 0)])).toMatchObject({
      restsOn: [0, 1],
      mainly: 1,
      xMm: -39,
      overEdge: { mm: 11, side: 'right' },
    });
  });

  it('a pillar that the slack closes carries too', () => {
    const low: Pieces = [put('post', -40, 0), put('cube', 40, 0), put('slab', 0, 0)];
    expect(last([...low.slice(0, 2), put('slab', 0, 0)], 2)?.restsOn).toEqual([0, 1]);
    expect(last([put('post', -40, 0, { resting: 'base' }), put('drum', 40, 0), put('slab', 0, 0)], 2)?.restsOn).toEqual(
      [0],
    );
  });

  it('one on the table that came later carries what was there: both are told', () => {
    const [, slab] = read([put('post', 0, 0), put('slab', 40, 0), put('post', 80, 0, { on: 'table' })]);
    expect(slab?.restsOn).toEqual([0, 2]);
  });
});

describe('beside', () => {
  it('is told of both, each from its side', () => {
    const [first, second] = read([put('cube', 0, 0), put('cube', 50, 0)]);
    expect(first?.beside).toEqual([{ of: 1, side: 'left' }]);
    expect(second?.beside).toEqual([{ of: 0, side: 'right' }]);
    expect(second?.restsOn).toEqual(['table']);
  });

  it('a round one behind', () => {
    expect(last([put('cube', 0, 0), put('drum', 0, 50)])?.beside).toEqual([{ of: 0, side: 'back' }]);
  });

  it('needs a common height: a piece on another only looks flush', () => {
    expect(last([put('cube', 0, 0), put('cube', 50, 0), put('cube', 50, 0)])?.beside).toEqual([]);
  });

  it('not with a gap wider than a contact', () => {
    expect(last([put('cube', 0, 0), put('cube', 50.06, 0)])?.beside).toEqual([]);
  });
});

it('of a layout that cannot be built, why', () => {
  const back = readBack([put('cube', 0, 0), put('cone', 0, 0)], over);
  expect(back).toMatchObject({ ok: false, issues: [{ code: 'kind-unknown', path: ['pieces', 1, 'kind'] }] });
});

it(`every piece rests on something below it, and its offset leads to its place (seed ${SEED})`, () => {
  fc.assert(
    fc.property(bench, run, (some, intents) => {
      const pieces = reached(intents, some);
      const back = readBack(pieces, some);
      if (!back.ok) throw new Error('refused');
      expect(back.value.length).toBe(pieces.length);
      for (const { index, restsOn, mainly, xMm, yMm, bottomMm } of back.value) {
        expect(restsOn).toContain(mainly);
        if (mainly === 'table') expect(bottomMm).toBeLessThanOrEqual(0.05 + some.slackMm);
        const from = mainly === 'table' ? undefined : pieces[mainly];
        expect(Math.round(100 * ((from?.xMm ?? 0) + xMm)) / 100).toBe(pieces[index]?.xMm);
        expect(Math.round(100 * ((from?.yMm ?? 0) + yMm)) / 100).toBe(pieces[index]?.yMm);
      }
    }),
    { seed: SEED, numRuns: share(1000, 40) },
  );
});
