// Drawings of every solid of the catalogue on every side that it can rest on.

import type { Solid, Vec2 } from '@cairnmark/geometry';
import { CATALOGUE } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import { kitScale, PICTURE_PX, putDown } from './kit-scale.ts';
import { drawingOf } from './solid-drawing.ts';
import { mixed, toneOf } from './tone.ts';
import { VIEWS } from './view.ts';

const solids = Object.values(CATALOGUE).map(({ make, example }): Solid => {
  const made = make(example);
  if (!made.ok) throw new RangeError(JSON.stringify(made.issues));
  return made.value;
});

const named = (id: string): Solid => solids.find((solid) => solid.id === id)!;

const everyWay = solids.flatMap((solid) => solid.restings.map(({ id }) => [solid.id, id, solid] as const));

const area = (ring: readonly Vec2[]): number =>
  Math.abs(
    ring.reduce((twice, [x, y], k) => {
      const [nextX, nextY] = ring[(k + 1) % ring.length]!;
      return twice + x * nextY - y * nextX;
    }, 0) / 2,
  );

describe('a drawing', () => {
  it.each(everyWay)(
    'of a %s on its %s: the faces in sight just cover what is seen of a flat-faced solid',
    (_, resting, solid) => {
      const { outline, faces, blend } = drawingOf(putDown(solid, resting), VIEWS.corner);
      const covered = faces.reduce((sum, { ring }) => sum + area(ring), 0);
      if (blend === null) expectNear(covered, area(outline), { relative: 1e-9 });
      else expect(covered).toBeLessThan(area(outline));
    },
  );

  it('of a ball is a circle of its radius', () => {
    const ball = named('sphere');
    const { outline, faces } = drawingOf(putDown(ball, undefined), VIEWS.corner);
    const r = ball.sizes['radius']!;
    expect(faces).toEqual([]);
    // 96 corners on the circle: area n/2 r2 sin(2 pi / n).
    expectNear(area(outline), 48 * r * r * Math.sin(Math.PI / 48), { relative: 1e-9 });
  });

  it('of a cylinder from above is its disc, from the front its upright section', () => {
    const piece = putDown(named('cylinder'), 'base');
    const { radius, height } = piece.solid.sizes;
    const above = drawingOf(piece, VIEWS.above);
    expect(above.faces.length).toBe(1);
    expectNear(area(above.outline), Math.PI * radius! ** 2, { relative: 1e-3 });
    expectNear(area(drawingOf(piece, VIEWS.front).outline), 2 * radius! * height!, { relative: 1e-3 });
  });

  it('of a cylinder on its side blends square to its axis', () => {
    const { blend } = drawingOf(putDown(named('cylinder'), 'side'), VIEWS.front);
    const upright = drawingOf(putDown(named('cylinder'), 'base'), VIEWS.front).blend;
    expect([blend?.kind, upright?.kind]).toEqual(['sideways', 'sideways']);
    if (upright?.kind !== 'sideways') return;
    expectNear(upright.to[0] - upright.from[0], 2 * named('cylinder').sizes['radius']!, { relative: 1e-3 });
    expectNear(upright.to[1] - upright.from[1], 0, { absolute: 1e-9 });
  });
});

describe('tones', () => {
  it('of a box in the corner view are those of the look: top, left, right', () => {
    const tones = (
      [
        [0, 0, 1],
        [0, -1, 0],
        [1, 0, 0],
      ] as const
    ).map((normal) => toneOf(normal, VIEWS.corner));
    tones.forEach((tone, k) => {
      expectNear(tone, [0.17, 0.08, -0.32][k]!, { absolute: 0.003 });
    });
  });

  it('do not change when the viewer walks round with the solid', () => {
    const turned = { ...VIEWS.corner, azimuthRad: VIEWS.corner.azimuthRad + Math.PI / 2 };
    expectNear(toneOf([0, 1, 0], turned), toneOf([1, 0, 0], VIEWS.corner), { absolute: 1e-12 });
  });

  it('mix in white or black', () => {
    expect(mixed('--p-box', 0.17)).toBe('color-mix(in oklab, var(--p-box) 83%, white)');
    expect(mixed('--p-box', -0.32)).toBe('color-mix(in oklab, var(--p-box) 68%, black)');
  });
});

describe('the scale of a kit', () => {
  it('is 3.5 px a cm, and smaller for all when one is larger than the picture', () => {
    expect(kitScale(solids)).toBe(0.35);
    const made = CATALOGUE.cube.make({ edge: 200 });
    if (!made.ok) throw new RangeError('a cube of 20 cm');
    const scale = kitScale([...solids, made.value]);
    expect(scale).toBeLessThan(0.35);
    const { outline } = drawingOf(putDown(made.value, undefined), VIEWS.corner);
    const high = Math.max(...outline.map(([, y]) => y)) - Math.min(...outline.map(([, y]) => y));
    expect(high * scale).toBeLessThanOrEqual(PICTURE_PX);
    expect(kitScale([])).toBe(0.35);
  });

  it('asks for a side that the solid has', () => {
    expect(() => putDown(named('cube'), 'dome')).toThrow(RangeError);
  });
});
