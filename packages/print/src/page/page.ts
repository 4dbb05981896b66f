// A page is paper with marks on it. Frame of every mark: mm, x right, y up, the origin in the lower left corner of the
// sheet; turns are counter-clockwise. The same way up as nets and outlines, so that nothing is ever drawn mirrored.

import type { Vec2 } from '@cairnmark/geometry';
import type { Path } from '@cairnmark/nets';
import type { Paper } from './paper.ts';

export interface Page {
  readonly paper: Paper;
  /** Drawn in this order: the later covers the earlier. */
  readonly marks: readonly Mark[];
}

export type Mark = Stroke | Fill | Writing;

/** A line along a path: the path is its middle, its ends are cut off straight, its corners are round. */
export interface Stroke {
  readonly kind: 'stroke';
  readonly path: Path;
  readonly widthMm: number;
  readonly grey: Grey;
  /** Drawn and left out by turns, beginning with drawn; [] is a line without gaps. */
  readonly dashMm: readonly number[];
}

/** What lies inside the paths, filled. A path that runs the other way round inside another leaves a hole (non-zero rule). */
export interface Fill {
  readonly kind: 'fill';
  readonly paths: readonly Path[];
  readonly grey: Grey;
}

/** One line of writing. */
export interface Writing {
  readonly kind: 'writing';
  readonly text: string;
  /** On the line that the letters stand on: its left end, middle or right end. */
  readonly at: Vec2;
  readonly align: Align;
  readonly font: Font;
  /** The size of the font: capitals are 0.718 of it high. */
  readonly sizeMm: number;
  /** rad, about `at`. */
  readonly turnRad: number;
  readonly grey: Grey;
}

export type Font = 'regular' | 'bold';
export type Align = 'left' | 'middle' | 'right';

/** 0 is black, 1 is white. Sheets have no other colours: they are copied in grey. */
export type Grey = number;

export const BLACK: Grey = 0;
