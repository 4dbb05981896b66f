// The named ways to put each solid down.

import type { SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import { solidOf } from '../solid-cases.ts';

describe('ways to stand', () => {
  test('a rectangular prism is as high as its height, its width, its length', () => {
    const solid = solidOf({ solid: 'rectangular-prism', sizes: { length: 70, width: 50, height: 30 } });
    expect(solid.restings.map(({ id, heightMm }) => [id, heightMm])).toEqual([
      ['base', 30],
      ['long-side', 50],
      ['short-side', 70],
    ]);
  });

  test.each([
    ['rectangular-frustum', ['base', 'top', 'side-length', 'side-width']],
    ['regular-frustum', ['base', 'top', 'side']],
    ['rectangular-pyramid', ['base', 'side-length', 'side-width']],
    ['regular-pyramid', ['base', 'side']],
    ['regular-prism', ['base', 'side']],
    ['antiprism', ['base', 'side']],
    ['octahedron', ['face']],
    ['cylinder', ['base', 'side']],
    ['cone', ['base', 'side']],
    ['cone-frustum', ['base', 'top', 'side']],
    ['sphere', ['round']],
    ['hemisphere', ['flat', 'dome']],
  ] as const)('%s: %s', (id, expected) => {
    expect(ways(id)).toEqual(expected);
  });
});

function ways(id: SolidSpec['solid']): readonly string[] {
  const sizes: SolidSpec['sizes'] = {
    ...({ length: 70, width: 50, height: 60, radius: 30, edge: 40, sides: 5 } as const),
    ...{ topLength: 35, topEdge: 20, topRadius: 20 },
  };
  const needed = makeSolid({ solid: id, sizes });
  if (needed.ok) return needed.value.restings.map((resting) => resting.id);
  const unknown = new Set(needed.issues.map(({ path }) => path[1]));
  const fitting = Object.fromEntries(Object.entries(sizes).filter(([name]) => !unknown.has(name)));
  return solidOf({ solid: id, sizes: fitting }).restings.map((resting) => resting.id);
}
