// The four ways a piece moves, and by how much a tap moves or turns it.

import type { Ruler } from '@cairnmark/geometry';
import { MM_PER_INCH } from '@cairnmark/geometry';

/** x is right, y is back. */
export const MOVES = [
  { name: 'tool.left', icon: 'left', key: 'ArrowLeft', x: -1, y: 0 },
  { name: 'tool.right', icon: 'right', key: 'ArrowRight', x: 1, y: 0 },
  { name: 'tool.back', icon: 'up', key: 'ArrowUp', x: 0, y: 1 },
  { name: 'tool.front', icon: 'down', key: 'ArrowDown', x: 0, y: -1 },
] as const;

/** Degrees. A tap turns by this; common practice of drawing programs, no source. */
export const TURN_DEGREES = 15;

/** Half a centimetre, or a quarter of an inch. */
export const usualStepMm = ({ unit }: Ruler): number => (unit === 'in' ? MM_PER_INCH / 4 : 5);

/** A millimetre, or a sixteenth of an inch. */
export const smallStepMm = ({ unit }: Ruler): number => (unit === 'in' ? MM_PER_INCH / 16 : 1);
