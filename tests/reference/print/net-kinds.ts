// The kinds of the demo class, whose pieces are folded from nets, as they are ordered for printing.

import { demoClass } from '@cairnmark/demo';
import type { SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import type { NetKind } from '@cairnmark/print';

/** So many of each of the twelve; every length times `scale`. */
export function demoKinds(count: number, scale = 1): readonly NetKind[] {
  const [challenge] = demoClass().challenges;
  return (challenge?.kit.kinds ?? [])
    .filter(({ material }) => material.kind === 'folded-paper')
    .map(({ id, name, solid }) => {
      const made = makeSolid(scaled(solid, scale));
      if (!made.ok) throw new Error(JSON.stringify(made.issues));
      return { id, name, solid: made.value, count };
    });
}

const scaled = ({ solid, sizes }: SolidSpec, scale: number): SolidSpec => ({
  solid,
  sizes: Object.fromEntries(
    Object.entries(sizes).map(([name, size]) => [name, name === 'sides' ? size : size * scale]),
  ),
});
