// What a call printed, before it is written.

import type { Page } from '@cairnmark/print';

export interface Made {
  /** Of the PDF. */
  readonly title: string;
  readonly pages: readonly Page[];
  /** Files for machines that cut, by their names in the folder that was asked for. */
  readonly drawings: readonly { readonly name: string; readonly text: string }[];
  /** What to tell besides the pages: what is on them, what is not, and what to do. */
  readonly lines: readonly string[];
}
