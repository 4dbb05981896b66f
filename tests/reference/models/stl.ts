// Binary STL, read by its published layout and refused where it is not kept. Source: M. Burns, Automated Fabrication (1993),
// section 6.5, The StL Format, after the StereoLithography Interface Specification of 3D Systems (1989). Its rule that all
// coordinates be positive is no longer kept by anybody (common practice, no source), and not asked for.

import type { Vec3 } from '@cairnmark/geometry';
import type { Triangle } from '../mesh-integrals.ts';

export interface Stl {
  /** What stands in its first 80 bytes, up to the first zero. */
  readonly head: string;
  /** In the file's own numbers, which have no unit. */
  readonly triangles: readonly Triangle[];
}

const HEAD_BYTES = 80;
/** Twelve floats and two bytes that no program of note uses. */
const FACET_BYTES = 50;
/** No unit. Floats of 32 bits have some 1e-7; a normal is worked out from differences of corners. */
const NORMAL_NEAR = 1e-3;

export function readStl(bytes: Uint8Array): Stl {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint32(HEAD_BYTES, true);
  const length = HEAD_BYTES + 4 + count * FACET_BYTES;
  if (bytes.byteLength !== length) throw new Error(`${count} facets take ${length} bytes, not ${bytes.byteLength}`);
  const head = new TextDecoder('ascii').decode(bytes.subarray(0, HEAD_BYTES)).split('\0')[0] ?? '';
  if (head.startsWith('solid')) throw new Error('programs would take it for the form in words');
  const triangles = Array.from({ length: count }, (_, facet): Triangle => {
    const start = HEAD_BYTES + 4 + facet * FACET_BYTES;
    const [normal, a, b, c] = [0, 1, 2, 3].map((k): Vec3 => {
      const at = (i: number): number => view.getFloat32(start + 12 * k + 4 * i, true);
      return [at(0), at(1), at(2)];
    });
    checkNormal(normal!, [a!, b!, c!], facet);
    return [a!, b!, c!];
  });
  return { head, triangles };
}

/** "The direction of the normal is outward", and the corners go round it by the right-hand rule. */
function checkNormal(normal: Vec3, [a, b, c]: Triangle, facet: number): void {
  const [u, v] = [minus(b, a), minus(c, a)];
  const cross: Vec3 = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const size = Math.hypot(...cross);
  const apart = Math.hypot(...cross.map((one, k) => one / size - normal[k]!));
  if (!(apart <= NORMAL_NEAR)) throw new Error(`the normal of facet ${facet} is off by ${apart}`);
}

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
