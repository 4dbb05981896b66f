// Laws of the best build, on seeded kits.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SMALL_KITS, seededTask } from '../../../../tests/reference/lab/best-kits.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { bestBuild, bestBuildSteps } from './best-build.ts';
import { ceilingMm } from './ceiling.ts';
import type { BestTask } from './types.ts';

const runs = { numRuns: share(3000, 100) };
const LIMIT = 10_000_000;
const seed = fc.integer({ min: 1, max: 2 ** 30 });
const taskOf = (of: number): BestTask => seededTask(of, SMALL_KITS, true);

function valueOf(task: BestTask, limit = LIMIT): number {
  const answer = bestBuild(task, limit);
  return answer.kind === 'best' ? answer.value : Number.NEGATIVE_INFINITY;
}

/** No more than the other, but for rounding. */
const expectNoMore = (one: number, other: number): void =>
  expect(one).toBeLessThanOrEqual(other + 1e-9 * Math.abs(Number.isFinite(other) ? other : 0));

describe('the best build', () => {
  it('is the same in whatever order the kinds stand', () => {
    fc.assert(
      fc.property(seed, fc.nat(), (of, shift) => {
        const task = taskOf(of);
        const turned = task.kinds.map((_, k) => (k + shift) % task.kinds.length);
        const of2 = <T>(list: readonly T[]): T[] => turned.flatMap((k) => list.slice(k, k + 1));
        const { grips } = task;
        const permuted = {
          ...task,
          kinds: of2(task.kinds),
          grips: grips === null ? null : { between: of2(grips.between).map(of2), onTable: of2(grips.onTable) },
        };
        const [one, other] = [valueOf(task), valueOf(permuted)];
        if (Number.isFinite(one)) expectNear(other, one, { relative: 1e-9 });
        else expect(other).toBe(one);
      }),
      runs,
    );
  });

  it('is never less with more pieces in stock', () => {
    fc.assert(
      fc.property(seed, fc.nat(), (of, which) => {
        const task = taskOf(of);
        const kinds = task.kinds.map((kind, k) =>
          k === which % task.kinds.length ? { ...kind, stock: kind.stock + 1 } : kind,
        );
        expectNoMore(valueOf(task), valueOf({ ...task, kinds }));
      }),
      runs,
    );
  });

  it('is never more under a stricter rule', () => {
    fc.assert(
      fc.property(seed, fc.double({ min: 0, max: 0.3, noNaN: true }), fc.nat(), (of, push, base) => {
        const task = taskOf(of);
        const best = valueOf(task);
        expectNoMore(valueOf({ ...task, pushAtLeast: task.pushAtLeast + push }), best);
        const baseAtMostMm2 = Math.min(task.baseAtMostMm2 ?? Number.POSITIVE_INFINITY, base % 60);
        expectNoMore(valueOf({ ...task, baseAtMostMm2 }), best);
        const { least, most } = task.pieces;
        if (least < most) expectNoMore(valueOf({ ...task, pieces: { least, most: most - 1 } }), best);
      }),
      runs,
    );
  });

  it('keeps its rules, and never passes the ceiling', () => {
    fc.assert(
      fc.property(seed, (of) => {
        const task = taskOf(of);
        const answer = bestBuild(task, LIMIT);
        if (answer.kind !== 'best') return;
        const { pieces, beside, standsPush, baseMm2, heightMm } = answer.tower;
        const all = [...pieces, ...beside];
        expect(all.length).toBeGreaterThanOrEqual(task.pieces.least);
        expect(all.length).toBeLessThanOrEqual(task.pieces.most);
        for (const { id, stock, least } of task.kinds) {
          const used = all.filter(({ kind }) => kind === id).length;
          expect(used).toBeGreaterThanOrEqual(least);
          expect(used).toBeLessThanOrEqual(stock);
        }
        expectNoMore(task.pushAtLeast, standsPush);
        expectNoMore(baseMm2, task.baseAtMostMm2 ?? Number.POSITIVE_INFINITY);
        expectNoMore(heightMm, ceilingMm(task));
        expectNoMore(answer.value, answer.ceiling ?? Number.POSITIVE_INFINITY);
      }),
      runs,
    );
  });
});

describe('the work limit', () => {
  it('[B4] cuts the search off at the same place, and then nothing is called the best', () => {
    fc.assert(
      fc.property(seed, fc.integer({ min: 0, max: 30 }), (of, limit) => {
        const task = taskOf(of);
        const [cut, whole] = [bestBuild(task, limit), bestBuild(task, LIMIT)];
        expect(bestBuild(task, limit)).toEqual(cut);
        expect(cut.looked).toBeLessThanOrEqual(limit);
        if (cut.kind === 'none') expect(whole.kind).toBe('none');
        const best = whole.kind === 'best' ? whole.value : Number.NEGATIVE_INFINITY;
        if (cut.kind === 'best') expectNear(cut.value, best, { relative: 1e-9 });
        if (cut.kind !== 'not-finished') return;
        expectNoMore(best, cut.noMoreThan);
        if (cut.value !== null) expectNoMore(cut.value, best);
      }),
      runs,
    );
  });

  it('is told of on the way', () => {
    const task = seededTask(7, { kinds: [12, 12], pieces: [9, 9] }, false);
    const told = [...bestBuildSteps(task, 40_000)].map(({ looked }) => looked);
    expect(told.slice(0, 2)).toEqual([5_000, 10_000]);
  });
});
