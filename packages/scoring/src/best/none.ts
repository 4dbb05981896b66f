// Why there is no build at all that keeps the rules.

import { steadiest } from './aims.ts';
import { prepare } from './prepared.ts';
import type { Work } from './search.ts';
import { search } from './search.ts';
import { STANDS_MM } from './tolerance.ts';
import { towerOf } from './tower.ts';
import type { BestAnswer, BestKind, BestProgress, BestTask, NoBuild } from './types.ts';

/** `work`: what is left after the search that found none; looking for the steadiest tower of so many pieces may take it. */
export function* whyNone(task: BestTask, work: Work): Generator<BestProgress, BestAnswer> {
  const looked = work.before;
  const plain = plainly(task);
  if (plain !== null) return { kind: 'none', why: plain, looked };
  // As many as the rules on kinds need, where that is more.
  const least = Math.max(
    task.pieces.least,
    task.kinds.reduce((sum, kind) => sum + kind.least, 0),
  );
  if (least > task.pieces.most) return { kind: 'none', why: { code: 'rules-clash' }, looked };
  const level = prepare({ ...task, beside: false, pieces: { least, most: least }, pushAtLeast: 0 });
  const steady = yield* search(level, steadiest(level, 0, 0), work);
  const all = looked + steady.looked;
  if (steady.best === null) return { kind: 'none', why: { code: 'rules-clash' }, looked: all };
  const greatest = towerOf(level, steady.best);
  if (!steady.finished) return { kind: 'not-finished', tower: null, value: null, noMoreThan: 0, looked: all };
  return { kind: 'none', why: { code: 'too-steep', greatest }, looked: all };
}

function plainly({ kinds, pieces, beside, baseAtMostMm2 }: BestTask): NoBuild | null {
  const stock = count(kinds, () => true);
  if (stock < pieces.least) return { code: 'too-few-pieces', pieces: stock, needed: pieces.least };
  const standing = kinds.filter((kind) => kind.stock > 0 && stands(kind));
  const carriers = count(standing, carries);
  const most = beside ? count(standing, () => true) : carriers + (standing.some((kind) => !carries(kind)) ? 1 : 0);
  if (most < pieces.least) return { code: 'too-few-carriers', most, needed: pieces.least };
  const bases = standing.flatMap(({ ways }) => ways.filter(isFirm).map(({ baseMm2 }) => baseMm2));
  const smallestMm2 = Math.min(...bases);
  if (baseAtMostMm2 !== null && smallestMm2 > baseAtMostMm2) return { code: 'base-too-small', smallestMm2 };
  return null;
}

const isFirm = ({ bottomInsideMm }: BestKind['ways'][number]): boolean => bottomInsideMm > STANDS_MM;
const stands = ({ ways }: BestKind): boolean => ways.some(isFirm);
const carries = ({ ways }: BestKind): boolean => ways.some((way) => isFirm(way) && way.topInsideMm > STANDS_MM);

const count = (kinds: readonly BestKind[], which: (kind: BestKind) => boolean): number =>
  kinds.filter(which).reduce((sum, { stock }) => sum + stock, 0);
