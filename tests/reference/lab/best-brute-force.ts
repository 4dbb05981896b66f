// The best build by trying everything: every order of pieces, every way up, every set of pieces beside. Shares nothing with
// the search: a tower is judged as a whole, joint by joint, from the centre of mass of all that stands above the joint.

import type { BestKind, BestTask, PointsRow, WayUp } from '@cairnmark/scoring';

interface Put {
  readonly kind: number;
  readonly up: WayUp;
}

export interface Tried {
  /** Best value of the goal; null: no build keeps the rules. */
  readonly value: number | null;
  /** Of the tallest, the smallest base, mm2. */
  readonly baseMm2: number | null;
  readonly towers: number;
}

/** Throws RangeError past `most` towers. */
export function tryEverything(task: BestTask, most: number): Tried {
  let [value, baseMm2, towers] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, 0];
  for (const tower of towersOf(task)) {
    towers += 1;
    if (towers > most) throw new RangeError(`more than ${most} towers`);
    const push = pushOf(tower, task);
    if (push <= 0 || push < task.pushAtLeast * (1 - 1e-12)) continue;
    for (const beside of besides(tower, task)) {
      if (!keepsRules(tower, beside, task)) continue;
      const one = valueOf(tower, beside, push, task);
      if (one > value * (1 + Math.sign(value) * 1e-12)) baseMm2 = Number.POSITIVE_INFINITY;
      if (one >= value * (1 - Math.sign(value) * 1e-12)) baseMm2 = Math.min(baseMm2, baseOf(tower, beside));
      value = Math.max(value, one);
    }
  }
  return Number.isFinite(value) ? { value, baseMm2, towers } : { value: null, baseMm2: null, towers };
}

/** From the table upwards; every piece but the top one has a level top under the line of centres. */
function* towersOf(task: BestTask, below: readonly Put[] = []): Generator<readonly Put[]> {
  if (below.length > 0) yield below;
  const top = below.at(-1);
  if (below.length === task.pieces.most || (top !== undefined && top.up.topInsideMm <= 0)) return;
  for (const put of putsOf(task.kinds, below)) yield* towersOf(task, [...below, put]);
}

function putsOf(kinds: readonly BestKind[], taken: readonly Put[]): Put[] {
  return kinds.flatMap(({ stock, ways }, kind) =>
    countOf(kind, taken) < stock ? ways.map((up) => ({ kind, up })) : [],
  );
}

/** The greatest push it bears; 0 or less when it does not stand by itself. */
function pushOf(tower: readonly Put[], { kinds, grips, goal }: BestTask): number {
  const mass = ({ kind }: Put): number => kinds[kind]?.massG ?? 0;
  let least = Number.POSITIVE_INFINITY;
  for (let joint = 0; joint < tower.length; joint += 1) {
    let [jointMm, sum, total] = [0, 0, 0];
    for (const put of tower.slice(joint)) {
      sum += mass(put) * (jointMm + put.up.centreHeightMm);
      total += mass(put);
      jointMm += put.up.heightMm;
    }
    const [upper, lower] = [tower[joint], tower[joint - 1]];
    if (upper === undefined) throw new RangeError('no piece');
    const inside = lower === undefined ? upper.up.bottomInsideMm : sharedMm(upper.up, lower.up);
    const friction = lower === undefined ? grips?.onTable[upper.kind] : grips?.between[upper.kind]?.[lower.kind];
    least = Math.min(least, inside / (sum / total), friction ?? Number.POSITIVE_INFINITY);
  }
  return goal.kind === 'greatest-tilt' || least > 0 ? least : 0;
}

/** A round face (one with a clipped distance of its own) has its rim only where all of it lies on the other. */
function sharedMm(upper: WayUp, lower: WayUp): number {
  const fits = (round: number, clipped: number, other: number): boolean => clipped !== round && round <= other + 1e-9;
  if (fits(upper.bottomInsideMm, upper.bottomClippedMm, lower.topInsideMm)) return upper.bottomInsideMm;
  if (fits(lower.topInsideMm, lower.topClippedMm, upper.bottomInsideMm)) return lower.topInsideMm;
  return Math.min(upper.bottomClippedMm, lower.topClippedMm);
}

/** Every set of pieces that may stand beside, each way up. */
function besides(tower: readonly Put[], task: BestTask): readonly (readonly Put[])[] {
  if (!task.beside || ONE_TOWER.has(task.goal.kind)) return [[]];
  const room = task.pieces.most - tower.length;
  const alone = task.kinds.flatMap(({ ways }, kind) =>
    ways
      .map((up): Put => ({ kind, up }))
      .filter((put) => pushOf([put], task) > 0 && pushOf([put], task) >= task.pushAtLeast * (1 - 1e-12)),
  );
  const sets: Put[][] = [[]];
  const grow = (set: readonly Put[], from: number): void => {
    if (set.length === room) return;
    for (let k = from; k < alone.length; k += 1) {
      const put = alone[k];
      if (put === undefined || countOf(put.kind, [...tower, ...set]) >= (task.kinds[put.kind]?.stock ?? 0)) continue;
      sets.push([...set, put]);
      grow([...set, put], k);
    }
  };
  grow([], 0);
  return sets;
}

/** What is sought of these is of one tower. */
const ONE_TOWER: ReadonlySet<BestTask['goal']['kind']> = new Set(['tallest-for-width', 'greatest-tilt']);

function keepsRules(tower: readonly Put[], beside: readonly Put[], task: BestTask): boolean {
  const all = [...tower, ...beside];
  if (all.length < task.pieces.least || all.length > task.pieces.most) return false;
  if (task.kinds.some(({ least }, kind) => countOf(kind, all) < least)) return false;
  return task.baseAtMostMm2 === null || baseOf(tower, beside) <= task.baseAtMostMm2 * (1 + 1e-12);
}

const baseOf = (tower: readonly Put[], beside: readonly Put[]): number =>
  [...tower.slice(0, 1), ...beside].reduce((sum, { up }) => sum + up.baseMm2, 0);

const heightOf = (tower: readonly Put[]): number => tower.reduce((sum, { up }) => sum + up.heightMm, 0);

function valueOf(tower: readonly Put[], beside: readonly Put[], push: number, { goal, kinds }: BestTask): number {
  if (goal.kind === 'greatest-tilt') return push;
  if (goal.kind === 'tallest-for-width') return heightOf(tower) / (tower[0]?.up.baseWidthMm ?? 0);
  if (goal.kind !== 'most-points') return heightOf(tower);
  const measureOf = (measure: string): number => {
    // What stands beside may be higher than the tower.
    if (measure === 'height') return Math.max(heightOf(tower), ...beside.map(({ up }) => up.heightMm));
    if (measure === 'base-area') return baseOf(tower, beside);
    return [...tower, ...beside].reduce((sum, { kind }) => sum + (kinds[kind]?.measures[measure] ?? 0), 0);
  };
  return goal.rows.reduce((sum, row) => sum + earned(row, measureOf(row.measure)), 0);
}

/** A row by the rules of the points table, in plain numbers: 1e-7 is far below a step and above rounding. */
function earned({ points, per, rounding, capPoints, floorPoints }: PointsRow, measure: number): number {
  const times = measure / per;
  const whole = {
    none: times,
    down: Math.floor(times + 1e-7),
    up: Math.ceil(times - 1e-7),
    nearest: Math.floor(times + 0.5 + 1e-7),
  }[rounding];
  const free = points * whole;
  return Math.max(Math.min(free, capPoints ?? free), floorPoints ?? Number.NEGATIVE_INFINITY);
}

const countOf = (kind: number, taken: readonly Put[]): number => taken.filter((put) => put.kind === kind).length;
