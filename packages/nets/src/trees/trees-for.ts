// The trees of a recipe for a solid that is closed or left open at the base, which is face 0.

import type { FaceTable } from '../unfold/faces.ts';
import type { Tree } from '../unfold/unfold.ts';
import type { NetRecipe } from './types.ts';

export interface Trees {
  readonly usual: readonly Tree[];
  readonly spare: readonly Tree[];
}

export function treesFor(
  recipe: NetRecipe & { readonly kind: 'faces' },
  table: FaceTable,
  base: 'closed' | 'open',
): Trees {
  const [usual, spare] = [recipe.usual(table), recipe.spare?.(table) ?? []];
  if (base === 'closed') return { usual, spare };
  return { usual: recipe.open?.(table) ?? withoutBase(usual), spare: withoutBase(spare) };
}

/** Those trees in which the base hangs at an end, less the base. */
function withoutBase(trees: readonly Tree[]): readonly Tree[] {
  return trees.flatMap((tree): Tree[] => {
    const rest = tree.joints.filter((joint) => !joint.includes(0));
    const lids = tree.lids?.filter((lid) => lid !== 0) ?? [];
    return rest.length === tree.joints.length - 1 ? [{ ...tree, joints: rest, lids }] : [];
  });
}
