// For tests: the box that a mark keeps within, mm. Writing counts from the tail of g to the top of capitals.

import type { Vec2 } from '@cairnmark/geometry';
import type { Path } from '@cairnmark/nets';
import type { Mark } from './page/page.ts';
import { textWidthMm } from './text/measure.ts';

export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export function boundsOf(mark: Mark): Bounds {
  switch (mark.kind) {
    case 'stroke':
      return grown(boundsOfPoints(pointsOf(mark.path)), mark.widthMm / 2);
    case 'fill':
      return boundsOfPoints(mark.paths.flatMap(pointsOf));
    case 'writing': {
      if (mark.turnRad !== 0) throw new RangeError('only for level writing');
      const lengthMm = textWidthMm(mark.text, mark);
      const left = mark.at[0] - { left: 0, middle: 0.5, right: 1 }[mark.align] * lengthMm;
      const bottom = mark.at[1] - DESCENT * mark.sizeMm;
      return { left, right: left + lengthMm, bottom, top: mark.at[1] + CAPITALS * mark.sizeMm };
    }
  }
}

/** No unit (of the font size): Descender and CapHeight of Helvetica.afm. */
const [DESCENT, CAPITALS] = [0.207, 0.718];

const pointsOf = ({ start, steps }: Path): readonly Vec2[] => [
  start,
  ...steps.flatMap((step) => (step.kind === 'line' ? [step.to] : [step.c1, step.c2, step.to])),
];

function boundsOfPoints(points: readonly Vec2[]): Bounds {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

const grown = ({ left, right, bottom, top }: Bounds, byMm: number): Bounds => ({
  left: left - byMm,
  right: right + byMm,
  bottom: bottom - byMm,
  top: top + byMm,
});
