// Whether a point is hidden from the lens by pieces: the way between is walked in small steps. Slow and plain on purpose.

import type { Point3 } from './camera-of-truth.ts';
import type { TruePiece } from './truth.ts';

export function hidden(point: Point3, lens: Point3, pieces: readonly TruePiece[]): boolean {
  for (let k = 1; k < STEPS; k += 1) {
    const share = k / STEPS / 2;
    const at: Point3 = [
      point[0] + share * (lens[0] - point[0]),
      point[1] + share * (lens[1] - point[1]),
      point[2] + share * (lens[2] - point[2]),
    ];
    if (pieces.some((piece) => holds(piece, at))) return true;
  }
  return false;
}

/** Half the way to a lens half a metre off, in steps of about half a millimetre. */
const STEPS = 600;

function holds({ kind, dims, x, y, z, outline, circle }: TruePiece, [px, py, pz]: Point3): boolean {
  if (kind === 'sphere') return Math.hypot(px - x, py - y, pz - circle!.z) < circle!.r;
  const share = (pz - z) / dims['height']!;
  if (share < 0 || share > 1) return false;
  const shrunk = kind === 'cone' || kind === 'square pyramid' ? 1 - share : 1;
  if (circle !== undefined) return Math.hypot(px - x, py - y) < shrunk * circle.r;
  return outline!.every((from, k) => {
    const to = outline![(k + 1) % outline!.length]!;
    const corner = (p: Point3): readonly [number, number] => [x + shrunk * (p[0] - x), y + shrunk * (p[1] - y)];
    const [[ax, ay], [bx, by]] = [corner(from), corner(to)];
    const side = (bx - ax) * (py - ay) - (by - ay) * (px - ax);
    return side * orientation(outline!) > 0;
  });
}

function orientation(outline: readonly Point3[]): number {
  return Math.sign(
    outline.reduce((sum, [ax, ay], k) => {
      const [bx, by] = outline[(k + 1) % outline.length]!;
      return sum + ax * by - bx * ay;
    }, 0),
  );
}
