// Triangles of a solid in its own frame, mm, for drawing only: no score is ever taken from them.
// Flat-faced solids come out exactly; round ones as inscribed facets about the upright axis.

import type { Body, Primitive } from '../solids/body.ts';
import type { FlatFace, Solid } from '../solids/types.ts';

export interface Mesh {
  /** x, y, z of each vertex in turn. */
  readonly positions: readonly number[];
  /** Three vertex numbers a triangle, counter-clockwise seen from outside. Each edge is shared by two triangles. */
  readonly triangles: readonly number[];
}

/** `solid` as triangles; `facets` on a full circle of a round one (at least 3). */
export function meshOf(solid: Solid, facets: number): Mesh {
  if (!Number.isInteger(facets) || facets < 3) throw new RangeError(`a circle needs 3 facets or more, not ${facets}`);
  return solid.curvedSurfaces.length === 0 ? fannedFaces(solid.flatFaces) : turned(profile(solid.body, facets), facets);
}

/** Each face cut into triangles that fan out from its first corner; corners at one place are one vertex. */
function fannedFaces(faces: readonly FlatFace[]): Mesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  const numbers = new Map<string, number>();
  for (const face of faces) {
    if (face.kind === 'disc') continue;
    const loop = face.corners.map((corner) => {
      const key = corner.join(' ');
      const number = numbers.get(key) ?? numbers.size;
      if (number === numbers.size) positions.push(...corner);
      numbers.set(key, number);
      return number;
    });
    const [first = 0, second = 0, ...others] = loop;
    let before = second;
    for (const next of others) {
      triangles.push(first, before, next);
      before = next;
    }
  }
  return { positions, triangles };
}

/** A level circle of a round solid; a radius of 0 is a point of the axis. */
interface Level {
  readonly radiusMm: number;
  readonly zMm: number;
}

/** The outline of a round body from the axis at the bottom, out and up, to the axis at the top. */
function profile(body: Body, facets: number): readonly Level[] {
  const levels = body.flatMap((primitive) => levelsOf(primitive, facets));
  const [lowest, highest] = [levels.at(0), levels.at(-1)];
  return [
    ...(lowest !== undefined && lowest.radiusMm > 0 ? [{ radiusMm: 0, zMm: lowest.zMm }] : []),
    ...levels,
    ...(highest !== undefined && highest.radiusMm > 0 ? [{ radiusMm: 0, zMm: highest.zMm }] : []),
  ];
}

function levelsOf(primitive: Primitive, facets: number): readonly Level[] {
  switch (primitive.kind) {
    case 'points':
      return primitive.points.map(([, , zMm]) => ({ radiusMm: 0, zMm }));
    case 'disc':
      return [{ radiusMm: primitive.radiusMm, zMm: primitive.centre[2] }];
    case 'ball':
      return bow(primitive.radiusMm, primitive.centre[2], -1, Math.ceil(facets / 2));
    case 'half-ball':
      return bow(primitive.radiusMm, primitive.centre[2], 0, Math.ceil(facets / 4));
  }
}

/** Levels of a ball from `from` quarter turns above its middle up to its top. */
function bow(radiusMm: number, middleMm: number, from: -1 | 0, steps: number): readonly Level[] {
  return Array.from({ length: steps + 1 }, (_, k) => {
    const angle = (Math.PI / 2) * (from + ((1 - from) * k) / steps);
    const atPole = k === steps || (from === -1 && k === 0);
    return { radiusMm: atPole ? 0 : radiusMm * Math.cos(angle), zMm: middleMm + radiusMm * Math.sin(angle) };
  });
}

/** The profile turned about the axis; each pair of neighbouring levels gives a band of triangles. */
function turned(levels: readonly Level[], facets: number): Mesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  let lower: readonly number[] = [];
  for (const { radiusMm, zMm } of levels) {
    const firstNumber = positions.length / 3;
    const corners = radiusMm > 0 ? facets : 1;
    for (let k = 0; k < corners; k += 1) {
      const angle = (2 * Math.PI * k) / facets;
      positions.push(radiusMm * Math.cos(angle), radiusMm * Math.sin(angle), zMm);
    }
    const upper = Array.from({ length: facets }, (_, k) => firstNumber + (k % corners));
    triangles.push(...band(lower, upper));
    lower = upper;
  }
  return { positions, triangles };
}

/** Triangles between two levels of as many entries; a pole is one vertex repeated, and gives no triangle of its own. */
function band(lower: readonly number[], upper: readonly number[]): readonly number[] {
  return lower.flatMap((a, k) => {
    const next = (k + 1) % lower.length;
    const [b, c, d] = [lower[next] ?? a, upper[next] ?? a, upper[k] ?? a];
    return [...(a === b ? [] : [a, b, d]), ...(c === d ? [] : [b, c, d])];
  });
}
