// Slabs poured into pages, from top to bottom. mm; the marks come about the lower left corner of the area of a page.

import type { Mark } from '../page/page.ts';
import { shifted } from '../page/shapes.ts';
import type { Room } from './room.ts';
import type { Slab } from './slab.ts';

interface Area {
  readonly heightMm: number;
}

/**
 * The marks of each page. A slab higher than a page is refused. `follow`: what stands above a slab that begins a page,
 * numbered from 0; null for nothing. It is left away where the slab would not fit below it.
 */
export function pour(
  slabs: readonly Slab[],
  { heightMm }: Area,
  refuse: Room['refuse'],
  follow: (first: Slab, page: number) => Slab | null,
): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [];
  let page: Mark[] = [];
  let usedMm = 0;
  const turnOver = (): void => {
    pages.push(page);
    [page, usedMm] = [[], 0];
  };
  const put = (one: Slab): void => {
    page.push(...one.marks.map((mark) => shifted(mark, [0, heightMm - usedMm])));
    usedMm += one.heightMm;
  };
  const begin = (one: Slab, k: number): void => {
    const above = one.newPage ? null : follow(one, pages.length);
    const ownMm = (one.head?.heightMm ?? 0) + togetherMm(slabs, k, heightMm);
    if (above !== null && above.heightMm + ownMm <= heightMm) put(above);
    if (one.head !== null) put(one.head);
  };
  slabs.forEach((one, k) => {
    const begun = usedMm > 0;
    if (begun && (one.newPage || usedMm + one.gapMm + togetherMm(slabs, k, heightMm) > heightMm + ROUNDING_MM))
      turnOver();
    if (usedMm > 0) usedMm += one.gapMm;
    else begin(one, k);
    const neededMm = usedMm + one.heightMm;
    if (neededMm > heightMm + ROUNDING_MM) {
      refuse({ code: 'part-too-high', path: one.path, details: { neededMm, roomMm: heightMm } });
    }
    put(one);
  });
  return [...pages, page];
}

/** How much a slab takes with those that it is kept together with; a run higher than a page is parted anywhere. */
function togetherMm(slabs: readonly Slab[], first: number, heightMm: number): number {
  let sumMm = slabs[first]?.heightMm ?? 0;
  for (let k = first; slabs[k]?.keep === true && k + 1 < slabs.length; k += 1) {
    sumMm += (slabs[k + 1]?.gapMm ?? 0) + (slabs[k + 1]?.heightMm ?? 0);
  }
  return sumMm <= heightMm ? sumMm : (slabs[first]?.heightMm ?? 0);
}

/** mm. Sums of heights are off by less. */
const ROUNDING_MM = 1e-6;
