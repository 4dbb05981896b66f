// What a sheet is made of, from top to bottom. Lengths in mm; writing grows with the print that is chosen, lengths do not.

import type { Align, Font, Mark } from '../page/page.ts';
import type { TextSize } from './sizes.ts';

export type Block =
  | Heading
  | Paragraph
  | List
  | Table
  | Columns
  | Lines
  | Fields
  | Drawing
  | { readonly kind: 'gap'; readonly heightMm: number }
  | { readonly kind: 'new-page' };

/** Stays with what follows it. */
export interface Heading {
  readonly kind: 'heading';
  readonly text: string;
  readonly size: 'title' | 'heading';
}

export interface Paragraph {
  readonly kind: 'paragraph';
  /** A line feed begins a new line. */
  readonly text: string;
  /** 'body' unless said otherwise. */
  readonly size?: TextSize;
  readonly font?: Font;
  readonly align?: Align;
}

/** Items with a point, with their number, or with a box to tick. */
export interface List {
  readonly kind: 'list';
  readonly mark: 'point' | 'number' | 'box';
  readonly items: readonly string[];
  readonly size?: TextSize;
}

export interface Table {
  readonly kind: 'table';
  readonly columns: readonly Column[];
  /** Repeated at the top of every page; bold, and in smaller letters where a word needs it. */
  readonly head?: readonly Cell[];
  readonly rows: readonly Row[];
  /** 'body' unless said otherwise; for cells that are a text. */
  readonly size?: TextSize;
  /** Lines round every cell, dashed ones to cut along, or none. */
  readonly rules: 'grid' | 'cut' | 'none';
  /** Where the content of a cell stands: 'top' unless said otherwise. */
  readonly stands?: 'top' | 'middle';
}

/** A width, or a share of what the columns with a width leave. */
export type Column = ({ readonly widthMm: number } | { readonly share: number }) & { readonly align?: Align };

export interface Row {
  /** As many as there are columns. '' stays empty, to be written in. */
  readonly cells: readonly Cell[];
  /** The row is as high as its content, and at least this. */
  readonly leastMm?: number;
  /** Content that is higher is refused. */
  readonly mostMm?: number;
}

export type Cell = string | readonly Block[];

/** Side by side, on one page. */
export interface Columns {
  readonly kind: 'columns';
  readonly columns: readonly { readonly share: number; readonly blocks: readonly Block[] }[];
}

/** Lines to write on. */
export interface Lines {
  readonly kind: 'lines';
  readonly count: number;
}

/** On one line: each label, with a line behind it to write on. */
export interface Fields {
  readonly kind: 'fields';
  readonly labels: readonly string[];
}

export interface Drawing {
  readonly kind: 'drawing';
  readonly widthMm: number;
  readonly heightMm: number;
  /** About the lower left corner of the drawing. */
  readonly marks: readonly Mark[];
  readonly align?: Align;
}
