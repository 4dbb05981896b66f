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

/** A build laid out on photos has a name of its own, after the others. */
type Coded =
  | Exclude<Layout, { kind: 'laid-out' }>
  | { readonly kind: 'laid-out'; readonly pieces: readonly LaidPiece[] }
  | { readonly kind: 'laid-out-on-photos'; readonly pieces: readonly LaidPiece[] };

const coded = kindOf<Coded>(
  {
    'laid-out': record({ pieces: list(piece) }),
    traced: record<Omit<Extract<Layout, { kind: 'traced' }>, 'kind'>>({
      outlines: list(traced),
      pieces: list(kind),
      heightMm: optional(number('height')),
    }),
    'numbers-only': record({ pieces: list(kind) }),
    'laid-out-on-photos': record({ pieces: list(piece) }),
  },
  3,
);

export const layout: Part<Layout> = {
  write: (value, out) => {
    const isOnPhotos = value.kind === 'laid-out' && value.traced === true;
    coded.write(isOnPhotos ? { kind: 'laid-out-on-photos', pieces: value.pieces } : value, out);
  },
  read: (from) => {
    const value = coded.read(from);
    if (value.kind !== 'laid-out-on-photos') return value;
    return { kind: 'laid-out', pieces: value.pieces, traced: true };
  },
};
