// Brightness on the scale of light. Lens and sensor mix light, so that the middle of a blurred edge lies halfway in light; on the
// picture's own scale it lies some tenths of a pixel inside the dark side. Source: IEC 61966-2-1 (sRGB).

import type { Grey, Plane } from './photo.ts';

/** The same picture, 0 to 255 in proportion to light, if its scale is that of sRGB. */
export function linearOf({ width, height, data }: Grey): Plane {
  const table = Float32Array.from({ length: 256 }, (_, value) => 255 * lightOf(value / 255));
  const light = new Float32Array(data.length);
  for (let k = 0; k < data.length; k += 1) light[k] = table[data[k] ?? 0] ?? 0;
  return { width, height, data: light };
}

const lightOf = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
