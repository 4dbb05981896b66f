// Paths and marks that are drawn often. mm, in the frame of the page (page.ts).

import type { Vec2 } from '@cairnmark/geometry';
import type { Path } from '@cairnmark/nets';
import { straightPath, turnPath } from '@cairnmark/nets';
import type { Grey, Mark, Stroke } from './page.ts';
import { BLACK } from './page.ts';

/** A straight line. */
export const segment = (from: Vec2, to: Vec2): Path => straightPath([from, to], false);

/** Through the corners and back to the first. Throws RangeError when there is none. */
export const ringPath = (corners: readonly Vec2[]): Path => straightPath(corners, true);

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
export const shifted = (mark: Mark, by: Vec2): Mark => turned(mark, 0, by);

/** The mark turned about the origin by `turnRad`, counter-clockwise, then shifted. */
export function turned(mark: Mark, turnRad: number, by: Vec2): Mark {
  switch (mark.kind) {
    case 'stroke':
      return { ...mark, path: turnPath(mark.path, turnRad, by) };
    case 'fill':
      return { ...mark, paths: mark.paths.map((path) => turnPath(path, turnRad, by)) };
    case 'writing': {
      const { start: at } = turnPath({ start: mark.at, steps: [], closed: false }, turnRad, by);
      return { ...mark, at, turnRad: mark.turnRad + turnRad };
    }
  }
}
