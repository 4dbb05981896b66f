// Of several trees the one that needs the smallest page, judged without tabs, so that it never depends on the size.

import { figureOf, overlaps } from '../plane/convex.ts';
import { placeOn } from '../plane/place-on.ts';
import { SAME_PAGE_RELATIVE } from '../tolerance.ts';
import type { FaceTable } from './faces.ts';
import type { Sheet, Tree } from './unfold.ts';
import { unfold } from './unfold.ts';

/** The sheet of the best tree: none of its faces overlap; of trees that need the same page the first one. */
export function chooseSheet(table: FaceTable, trees: readonly Tree[]): Sheet {
  const sheets = trees.map((tree) => unfold(table, rootOf(tree), tree)).filter((sheet) => !overlapsItself(sheet));
  const [first, ...others] = sheets;
  if (first === undefined) throw new RangeError('every tree of this solid overlaps itself');
  let best = { sheet: first, scale: others.length > 0 ? scaleOf(first) : 1 };
  for (const sheet of others) {
    const scale = scaleOf(sheet);
    if (scale > best.scale * (1 + SAME_PAGE_RELATIVE)) best = { sheet, scale };
  }
  return best.sheet;
}

/** Whether two faces of a sheet lie over each other. */
export function overlapsItself({ faces }: Sheet): boolean {
  const figures = faces.map(({ ring }) => figureOf(ring));
  return figures.some((figure, k) => figures.slice(k + 1).some((other) => overlaps(figure, other)));
}

export function rootOf({ joints }: Tree): number {
  const [first] = joints;
  if (first === undefined) throw new RangeError('a tree has a joint');
  return first[0];
}

/** How much larger the sheet could be on a page of the usual shape, one to root two. */
const scaleOf = ({ faces }: Sheet): number =>
  placeOn(
    faces.flatMap(({ ring }) => ring),
    1,
    Math.SQRT2,
  ).scale;
