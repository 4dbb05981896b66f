// Which nets are to be printed, and what came of it.

import type { Solid } from '@cairnmark/geometry';
import type { NetIssue } from '@cairnmark/nets';
import type { Page } from '../page/page.ts';
import type { PaperSize } from '../page/paper.ts';

export interface NetOrder {
  /** `name` stands on the paper; `count`: nets of it in all, a whole number, 0 for none. */
  readonly kinds: readonly NetKind[];
  readonly paper: PaperSize;
  /** All kinds on as few pages as can be; or pages of one kind each, with as many copies as fit, to photocopy. */
  readonly arrange: 'mixed' | 'masters';
  readonly tabDepthMm: number;
  /** A net that is larger than a page is left out and told, or parted at folds. */
  readonly large: 'tell' | 'split';
  /** Of a class that is made up, which each page says. */
  readonly invented?: boolean;
}

export interface NetKind {
  readonly id: string;
  readonly name: string;
  readonly solid: Solid;
  readonly count: number;
  /** Whether its pieces are left open at the base, as the kit may say; closed when it is not said. */
  readonly base?: 'closed' | 'open';
}

export interface NetSheets {
  /** Framed, with check bars. */
  readonly pages: readonly Page[];
  /** How often each page is needed for as many nets as were ordered: once, or so many copies of a page to photocopy. */
  readonly copies: readonly number[];
  /** Kinds of which there is no net here: nobody folds them, or they are too large for the paper. */
  readonly leftOut: readonly LeftOut[];
  /** Nets on all pages, each page once, by kind id. */
  readonly counts: ReadonlyMap<string, number>;
}

export interface LeftOut {
  readonly kind: string;
  readonly issue: NetIssue;
}
