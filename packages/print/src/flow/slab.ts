// A slab is a piece of a sheet that no page break cuts. Its marks are about its upper left corner: mm, x right, y up, so
// that they stand at y <= 0.

import type { PrintIssue } from '../issue.ts';
import type { Mark } from '../page/page.ts';
import { shifted } from '../page/shapes.ts';

export interface Slab {
  readonly heightMm: number;
  readonly marks: readonly Mark[];
  /** Space between it and what stands above it on the page. */
  readonly gapMm: number;
  /** Stands on the same page as the next one. */
  readonly keep: boolean;
  /** Stands above it where it begins a page. */
  readonly head: Slab | null;
  readonly newPage: boolean;
  readonly path: PrintIssue['path'];
}

/** A slab that nothing special is wanted of. */
export const slab = (path: PrintIssue['path'], heightMm: number, marks: readonly Mark[], gapMm: number): Slab => ({
  heightMm,
  marks,
  gapMm,
  keep: false,
  head: null,
  newPage: false,
  path,
});

/** All of them one below the other, and how high that is. Page breaks in between do not count. */
export function stacked(slabs: readonly Slab[]): { readonly heightMm: number; readonly marks: readonly Mark[] } {
  let heightMm = 0;
  const marks = slabs.flatMap((one, k) => {
    const topMm = heightMm + (k === 0 ? 0 : one.gapMm);
    heightMm = topMm + one.heightMm;
    return one.marks.map((mark) => shifted(mark, [0, -topMm]));
  });
  return { heightMm, marks };
}
