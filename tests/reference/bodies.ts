// Bodies made by hand from corners, discs and balls, for tests that must not lean on the catalogue of solids.
// They stand on z = 0 about the upright axis; mm, rad.

import type { Part } from './drop-dual-search.ts';

type Point = readonly [number, number, number];
type Body = readonly Part[];

export const points = (...corners: readonly Point[]): Body => [{ kind: 'points', points: corners }];

export function box(widthMm: number, depthMm: number, heightMm: number): Body {
  const [x, y] = [widthMm / 2, depthMm / 2];
  const ring = (z: number): Point[] => [
    [-x, -y, z],
    [x, -y, z],
    [x, y, z],
    [-x, y, z],
  ];
  return points(...ring(0), ...ring(heightMm));
}

export const ball = (radiusMm: number): Body => [{ kind: 'ball', centre: [0, 0, radiusMm], radiusMm }];

const disc = (radiusMm: number, zMm: number): Part => ({
  kind: 'disc',
  centre: [0, 0, zMm],
  axis: [0, 0, 1],
  radiusMm,
});

export const cylinder = (radiusMm: number, heightMm: number): Body => [disc(radiusMm, 0), disc(radiusMm, heightMm)];

export const cone = (radiusMm: number, heightMm: number): Body => [disc(radiusMm, 0), ...points([0, 0, heightMm])];

export const dome = (radiusMm: number): Body => [{ kind: 'half-ball', centre: [0, 0, 0], axis: [0, 0, 1], radiusMm }];

/** The body turned about the x axis, then about the upright axis, then moved. */
export function placed(body: Body, rollRad: number, turnRad: number, [x, y, z]: Point): Body {
  const spin = (p: Point): Point => {
    const [py, pz] = turned(p[1], p[2], rollRad);
    const [qx, qy] = turned(p[0], py, turnRad);
    return [qx, qy, pz];
  };
  const move = (p: Point): Point => {
    const [px, py, pz] = spin(p);
    return [px + x, py + y, pz + z];
  };
  return body.map((part): Part => {
    if (part.kind === 'points') return { kind: 'points', points: part.points.map(move) };
    if (part.kind === 'ball') return { ...part, centre: move(part.centre) };
    return { ...part, centre: move(part.centre), axis: spin(part.axis) };
  });
}

export const moved = (body: Body, x: number, y: number, z = 0): Body => placed(body, 0, 0, [x, y, z]);

/** Upside down, standing on z = 0 again when it was `heightMm` high. */
export const flipped = (body: Body, heightMm: number): Body => placed(body, Math.PI, 0, [0, 0, heightMm]);

/** A body of revolution laid on its side, its axis along y, touching z = 0 when its widest radius is `radiusMm`. */
export const onSide = (body: Body, radiusMm: number): Body => placed(body, -Math.PI / 2, 0, [0, 0, radiusMm]);

function turned(u: number, v: number, angleRad: number): readonly [number, number] {
  const [c, s] = [Math.cos(angleRad), Math.sin(angleRad)];
  return [c * u - s * v, s * u + c * v];
}
