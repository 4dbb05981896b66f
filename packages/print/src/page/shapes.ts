// Paths and marks that are drawn often. mm, in the frame of the page (page.ts).

import type { Vec2 } from '@cairnmark/geometry';
import { add2 } from '@cairnmark/geometry';
import type { Path, PathStep } from '@cairnmark/nets';
import type { Grey, Mark, Stroke } from './page.ts';
import { BLACK } from './page.ts';

/** A straight line. */
export const segment = (from: Vec2, to: Vec2): Path => ({ start: from, steps: [{ kind: 'line', to }], closed: false });

/** Through the corners and back to the first. Throws RangeError when there is none. */
export function ringPath([start, ...rest]: readonly Vec2[]): Path {
  if (start === undefined) throw new RangeError('a ring without corners');
  return { start, steps: rest.map((to): PathStep => ({ kind: 'line', to })), closed: true };
}

/** Counter-clockwise from its lower left corner. */
export const rectangle = ([x, y]: Vec2, widthMm: number, heightMm: number): Path =>
  ringPath([
    [x, y],
    [x + widthMm, y],
    [x + widthMm, y + heightMm],
    [x, y + heightMm],
  ]);

/** A line without gaps, black unless said otherwise. */
export const solidLine = (path: Path, widthMm: number, grey: Grey = BLACK): Stroke => ({
  kind: 'stroke',
  path,
  widthMm,
  grey,
  dashMm: [],
});

/** The mark shifted. */
export function shifted(mark: Mark, by: Vec2): Mark {
  switch (mark.kind) {
    case 'stroke':
      return { ...mark, path: shiftedPath(mark.path, by) };
    case 'fill':
      return { ...mark, paths: mark.paths.map((path) => shiftedPath(path, by)) };
    case 'writing':
      return { ...mark, at: add2(mark.at, by) };
  }
}

const shiftedPath = ({ start, steps, closed }: Path, by: Vec2): Path => ({
  start: add2(start, by),
  steps: steps.map((step): PathStep => {
    const to = add2(step.to, by);
    return step.kind === 'line' ? { ...step, to } : { ...step, c1: add2(step.c1, by), c2: add2(step.c2, by), to };
  }),
  closed,
});
