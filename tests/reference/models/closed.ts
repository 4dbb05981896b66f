// Whether triangles close round a body, told from their corners alone: corners at the same place are one.

import type { Triangle } from '../mesh-integrals.ts';

/** Throws unless each edge is shared by exactly two triangles, once each way: closed, and all turned the same way out. */
export function checkClosed(triangles: readonly Triangle[]): void {
  const seen = new Map<string, number>();
  for (const [a, b, c] of triangles) {
    for (const edge of [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`]) seen.set(edge, (seen.get(edge) ?? 0) + 1);
  }
  if (seen.size === 0) throw new Error('no triangles at all');
  for (const [edge, times] of seen) {
    const back = seen.get(edge.split(' ').reverse().join(' ')) ?? 0;
    if (times !== 1 || back !== 1) throw new Error(`edge ${edge}: ${times} times, and ${back} times backwards`);
  }
}
