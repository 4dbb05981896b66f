// The layout with other pieces. What was laid out on photos stays as exact as those, until nothing of it is left.

import type { Pieces } from '@cairnmark/editing';
import type { Layout } from '@cairnmark/geometry';

export const withPieces = (layout: Layout | undefined, pieces: Pieces): Layout =>
  layout?.kind === 'laid-out' && layout.traced === true && pieces.length > 0
    ? { kind: 'laid-out', pieces, traced: true }
    : { kind: 'laid-out', pieces };
