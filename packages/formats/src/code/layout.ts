// Layouts in codes: laid out, traced, or numbers only. A kind is written once, however many pieces are of it.

import type { LaidPiece, Layout, Outline, TracedOutline, Vec2, Weighed } from '@cairnmark/geometry';
import { number } from './numbers.ts';
import type { Part } from './part.ts';
import { flag, kindOf, list, optional, record } from './part.ts';
import { hold } from './tables.ts';
import { word } from './texts.ts';

const kind = word('kind');

const onTable: Part<LaidPiece['on']> = {
  write: (value, out) => flag.write(value === 'table', out),
  read: (from) => (flag.read(from) ? 'table' : undefined),
};

const piece = record<LaidPiece>({
  kind,
  resting: word('resting'),
  xMm: number('x'),
  yMm: number('y'),
  turnRad: number('turn'),
  on: onTable,
  held: optional(hold),
  weighed: optional(record<Weighed>({ massG: number('mass'), centreMm: optional(number('centre')) })),
});

const point: Part<Vec2> = {
  write: ([xMm, yMm], out) => {
    number('x').write(xMm, out);
    number('y').write(yMm, out);
  },
  read: (from) => [number('x').read(from), number('y').read(from)],
};

const outline = kindOf<Outline>(
  { polygon: record({ points: list(point) }), disc: record({ centre: point, radiusMm: number('radius') }) },
  2,
);

const traced = record<TracedOutline>({ outline, planeMm: number('plane'), onTable: flag });

export const layout: Part<Layout> = kindOf<Layout>(
  {
    'laid-out': record({ pieces: list(piece) }),
    traced: record<Omit<Extract<Layout, { kind: 'traced' }>, 'kind'>>({
      outlines: list(traced),
      pieces: list(kind),
      heightMm: optional(number('height')),
    }),
    'numbers-only': record({ pieces: list(kind) }),
  },
  3,
);
