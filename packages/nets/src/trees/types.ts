// How the paper for a solid is cut: which faces hang together. A new solid says so in one file here and one line in the
// catalogue beside it.

import type { FaceTable } from '../unfold/faces.ts';
import type { Tree } from '../unfold/unfold.ts';

/**
 * `faces`: flat faces alone, laid out by a tree. Of several `usual` trees the one that needs the smallest page is taken, of
 * those that need the same the first; which one that is depends on the shape of the solid, never on its size. A `spare`
 * tree is less familiar: it is drawn only where a page is too small for the usual one. `open` trees leave out face 0, the
 * base; without any, the usual ones are taken in which the base hangs at an end, less the base.
 * `round`: one curved surface about the upright axis, cut as a rectangle, a sector or a ring sector, and loose discs.
 * `none`: a piece that nobody folds from flat paper.
 */
export type NetRecipe =
  | {
      readonly kind: 'faces';
      readonly usual: (table: FaceTable) => readonly Tree[];
      readonly spare?: (table: FaceTable) => readonly Tree[];
      readonly open?: (table: FaceTable) => readonly Tree[];
    }
  | { readonly kind: 'round' }
  | { readonly kind: 'none' };
