// A code as squares to be printed: in one fill, so that no seam shows between them. mm.

import type { Drawing } from '../flow/blocks.ts';
import { BLACK } from '../page/page.ts';
import { rectangle } from '../page/shapes.ts';
import type { TableCard } from './data.ts';

/** As large as `sideMm`. */
export function qrDrawing(rows: TableCard['qr'], sideMm: number): Drawing {
  const squareMm = sideMm / rows.length;
  const paths = rows.flatMap((row, y) =>
    runsOf(row).map(({ start, length }) =>
      rectangle([start * squareMm, sideMm - (y + 1) * squareMm], length * squareMm, squareMm),
    ),
  );
  return {
    kind: 'drawing',
    widthMm: sideMm,
    heightMm: sideMm,
    align: 'right',
    marks: paths.length === 0 ? [] : [{ kind: 'fill', paths, grey: BLACK }],
  };
}

interface Run {
  readonly start: number;
  readonly length: number;
}

/** Dark squares side by side, as one. */
const runsOf = (row: readonly boolean[]): readonly Run[] =>
  row.flatMap((dark, x) => {
    if (!dark || row[x - 1] === true) return [];
    const end = row.indexOf(false, x);
    return [{ start: x, length: (end < 0 ? row.length : end) - x }];
  });
