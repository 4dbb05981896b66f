// Of several trees the one that needs the smallest page, judged without tabs, so that it never depends on the size.

import { figureOf, overlaps } from '../plane/convex.ts';
import { placeOn } from '../plane/place-on.ts';
import { SAME_PAGE_RELATIVE } from '../tolerance.ts';
import type { FaceTable } from './faces.ts';
import type { Sheet, Tree } from './unfold.ts';
import { unfold } from './unfold.ts';

export interface Sheets {
  /** Of the usual trees the one that needs the smallest page; of those that need the same the first. */
  readonly usual: Sheet;
  readonly others: readonly Sheet[];
}

/** The sheets of trees whose faces do not overlap; there is always a usual one. */
export function sheetsOf(table: FaceTable, { usual, spare }: Record<'usual' | 'spare', readonly Tree[]>): Sheets {
  const [known, more] = [usual, spare].map((trees) =>
    trees.map((tree) => unfold(table, rootOf(tree), tree)).filter((sheet) => !overlapsItself(sheet)),
  );
  const [first, ...others] = known ?? [];
  if (first === undefined) throw new RangeError('every tree of this solid overlaps itself');
  let best = { sheet: first, scale: others.length > 0 ? scaleOn(first, 1, Math.SQRT2) : 1 };
  for (const sheet of others) {
    const scale = scaleOn(sheet, 1, Math.SQRT2);
    if (scale > best.scale * (1 + SAME_PAGE_RELATIVE)) best = { sheet, scale };
  }
  return { usual: best.sheet, others: [first, ...others, ...(more ?? [])].filter((sheet) => sheet !== best.sheet) };
}

/** Those that fit a page without their tabs, those with most room first. */
export function bestOn(sheets: readonly Sheet[], widthMm: number, heightMm: number): readonly Sheet[] {
  return sheets
    .map((sheet) => ({ sheet, scale: scaleOn(sheet, widthMm, heightMm) }))
    .filter(({ scale }) => scale >= 1)
    .sort((a, b) => b.scale - a.scale)
    .map(({ sheet }) => sheet);
}

/** Whether two faces of a sheet lie over each other. */
export function overlapsItself({ faces }: Sheet): boolean {
  const figures = faces.map(({ ring }) => figureOf(ring));
  return figures.some((figure, k) => figures.slice(k + 1).some((other) => overlaps(figure, other)));
}

function rootOf({ joints }: Tree): number {
  const [first] = joints;
  if (first === undefined) throw new RangeError('a tree has a joint');
  return first[0];
}

/** How much larger the sheet could be on a page. */
export const scaleOn = ({ faces }: Sheet, widthMm: number, heightMm: number): number =>
  placeOn(
    faces.flatMap(({ ring }) => ring),
    widthMm,
    heightMm,
  ).scale;
