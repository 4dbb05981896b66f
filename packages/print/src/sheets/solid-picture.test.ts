import { CATALOGUE, makeSolid } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { boundsOf } from '../bounds-of.ts';
import { pictureScale, solidPicture } from './solid-picture.ts';

const solids = Object.values(CATALOGUE).map(({ id, example }) => {
  const made = makeSolid({ solid: id, sizes: example });
  if (!made.ok) throw new Error(id);
  return made.value;
});

const SIDE_MM = 23;

/** mm. Coordinates of some hundred mm, to rounding. */
const ROUNDING_MM = 1e-9;

describe('the picture of a solid', () => {
  const scale = pictureScale(solids, SIDE_MM);
  const boxes = solids.map((solid) => solidPicture(solid, scale, SIDE_MM).marks.map(boundsOf));

  it('stays within its square', () => {
    for (const { left, right, bottom, top } of boxes.flat()) {
      expect(Math.min(left, bottom)).toBeGreaterThanOrEqual(-ROUNDING_MM);
      expect(Math.max(right, top)).toBeLessThanOrEqual(SIDE_MM + ROUNDING_MM);
    }
  });

  it('of the largest fills it', () => {
    const reaches = boxes.map((box) => {
      const [wide, high] = [
        Math.max(...box.map(({ right }) => right)) - Math.min(...box.map(({ left }) => left)),
        Math.max(...box.map(({ top }) => top)) - Math.min(...box.map(({ bottom }) => bottom)),
      ];
      return Math.max(wide, high);
    });
    expect(Math.max(...reaches)).toBeGreaterThan(SIDE_MM - ROUNDING_MM);
  });

  it('shows three faces of a cube and the top of a cylinder', () => {
    const filled = (id: string): number => {
      const solid = solids.find((one) => one.id === id);
      return solid === undefined
        ? 0
        : solidPicture(solid, scale, SIDE_MM).marks.filter(({ kind }) => kind === 'fill').length;
    };
    // The ground of its outline is filled too.
    expect([filled('cube'), filled('cylinder'), filled('sphere')]).toEqual([4, 2, 1]);
  });
});
