// Whether triangles close round a body, told from their corners alone: corners at the same place are one.

import type { Triangle } from '../mesh-integrals.ts';

/** Corners that are the same to the last bit, numbered from 0 as they come: three numbers a triangle. */
export function cornerNumbers(triangles: readonly Triangle[]): readonly number[] {
  const numbers = new Map<string, number>();
  return triangles.flat().map((corner) => {
    const place = corner.join(' ');
    const number = numbers.get(place) ?? numbers.size;
    numbers.set(place, number);
    return number;
  });
}

/** Throws unless each edge is shared by exactly two triangles, once each way: closed, and all turned the same way out. */
export function checkClosed(triangles: readonly Triangle[]): void {
  const corners = cornerNumbers(triangles);
  const count = corners.length;
  if (count === 0) throw new Error('no triangles at all');
  const edges = corners.map((from, k) => from * count + corners[k % 3 === 2 ? k - 2 : k + 1]!);
  const seen = new Set(edges);
  if (seen.size < count) throw new Error(`${count - seen.size} edges are run along twice the same way`);
  const open = edges.filter((edge) => !seen.has((edge % count) * count + Math.floor(edge / count)));
  if (open.length > 0) throw new Error(`${open.length} edges have a triangle on one side alone`);
}
