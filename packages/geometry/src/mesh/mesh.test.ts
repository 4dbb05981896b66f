import { describe, expect, test } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import { CATALOGUE, makeSolid } from '../solids/catalogue.ts';
import type { Solid, SolidSpec } from '../solids/types.ts';
import { meshOf } from './mesh.ts';

const ROUNDING = { relative: 1e-13 };

describe('how many triangles', () => {
  // Closed surfaces: faces = 2 vertices - 4, whatever the shape.
  test.each(Object.values(CATALOGUE))('$id: twice its vertices less four', ({ id, example }) => {
    const { positions, triangles } = meshOf(solid({ solid: id, sizes: example }), 10);
    expect(triangles.length / 3).toBe((2 * positions.length) / 3 - 4);
    expect(Math.max(...triangles)).toBe(positions.length / 3 - 1);
  });

  test('an icosahedron is its 20 faces on its 12 vertices', () => {
    const { positions, triangles } = meshOf(solid({ solid: 'icosahedron', sizes: { edge: 7 } }), 3);
    expect([positions.length / 3, triangles.length / 3]).toEqual([12, 20]);
  });
});

describe('facets are inscribed, so a circle of n holds (n / 2 pi) sin(2 pi / n) of its disc', () => {
  const held = (facets: number): number => Math.sin((2 * Math.PI) / facets) / ((2 * Math.PI) / facets);

  test.each([3, 5, 16, 97])('%d facets: cylinder, cone and cone frustum by that share', (facets) => {
    for (const spec of [
      { solid: 'cylinder', sizes: { radius: 3, height: 5 } },
      { solid: 'cone', sizes: { radius: 3, height: 5 } },
      { solid: 'cone-frustum', sizes: { radius: 5, topRadius: 3, height: 7 } },
    ] as const) {
      const made = solid(spec);
      expectNear(volume(made, facets), made.volumeMm3 * held(facets), ROUNDING, spec.solid);
    }
  });

  test.each([8, 16, 96])('%d facets: ball and half ball by that share times cos^2 of half a step up', (facets) => {
    for (const id of ['sphere', 'hemisphere'] as const) {
      const made = solid({ solid: id, sizes: { radius: 7 } });
      const share = held(facets) * Math.cos(Math.PI / facets) ** 2;
      expectNear(volume(made, facets), made.volumeMm3 * share, ROUNDING, id);
    }
  });
});

test('a circle of fewer than three facets, or of half a facet, is a mistake of the program', () => {
  const ball = solid({ solid: 'sphere', sizes: { radius: 7 } });
  for (const facets of [2, 0, -5, 7.5, Number.NaN]) expect(() => meshOf(ball, facets)).toThrow(RangeError);
});

function solid(spec: SolidSpec): Solid {
  const made = makeSolid(spec);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
}

/** The signed volume: negative if the triangles faced inward. */
function volume(made: Solid, facets: number): number {
  const { positions, triangles } = meshOf(made, facets);
  let sum = 0;
  for (let k = 0; k < triangles.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((i) => {
      const first = 3 * triangles[k + i]!;
      return positions.slice(first, first + 3) as [number, number, number];
    });
    sum +=
      (a![0] * (b![1] * c![2] - b![2] * c![1]) +
        a![1] * (b![2] * c![0] - b![0] * c![2]) +
        a![2] * (b![0] * c![1] - b![1] * c![0])) /
      6;
  }
  return sum;
}
