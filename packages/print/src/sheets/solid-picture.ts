// A solid as a small line drawing: its outline and the flat faces in sight, in the corner view of the screens. mm.

import type { Basis, FlatFace, Solid, SolidId, Vec2, Vec3 } from '@cairnmark/geometry';
import { dot3, rimOf, silhouetteOf } from '@cairnmark/geometry';
import type { Drawing } from '../flow/blocks.ts';
import type { Grey, Mark } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import { ringPath, shifted, solidLine } from '../page/shapes.ts';

/** In the middle of a square of `sideMm`; `scale`: mm on paper for a mm of the solid. */
export function solidPicture(solid: Solid, scale: number, sideMm: number): Drawing {
  const basis = basisFor(solid.id);
  const flat = (points: readonly Vec3[]): readonly Vec2[] =>
    points.map((point): Vec2 => [scale * dot3(point, basis.right), scale * dot3(point, basis.up)]);
  const outline = flat(silhouetteOf(solid.body, basis));
  const { least, most } = boxOf(outline);
  const faces = solid.flatFaces.filter(({ normal }) => dot3(normal, basis.away) < -EDGE_ON);
  const marks: readonly Mark[] = [
    ...shape(outline, CURVED_GREY),
    ...faces.flatMap((face) => shape(flat(rimOf(face)), toneOf(face, basis))),
    solidLine(ringPath(outline), OUTLINE_MM),
  ];
  const toMiddle: Vec2 = [(sideMm - least[0] - most[0]) / 2, (sideMm - least[1] - most[1]) / 2];
  return { kind: 'drawing', widthMm: sideMm, heightMm: sideMm, marks: marks.map((mark) => shifted(mark, toMiddle)) };
}

/** One scale for all, so that a taller solid is drawn taller: the largest just fits into the square. */
export function pictureScale(solids: Iterable<Solid>, sideMm: number): number {
  let largestMm = 0;
  for (const solid of solids) {
    const { right, up } = basisFor(solid.id);
    const points = silhouetteOf(solid.body, basisFor(solid.id));
    const { least, most } = boxOf(points.map((point): Vec2 => [dot3(point, right), dot3(point, up)]));
    largestMm = Math.max(largestMm, most[0] - least[0], most[1] - least[1]);
  }
  return largestMm === 0 ? 1 : (sideMm - OUTLINE_MM) / largestMm;
}

const DEGREE = Math.PI / 180;

/** Seen from 30 degrees to the right and 22 down; prisms less from the side, so that the end shows its shape. */
function basisFor(id: SolidId): Basis {
  const [aside, down] = [(PRISMS.includes(id) ? 13 : 30) * DEGREE, 22 * DEGREE];
  const [c, s] = [Math.cos(aside), Math.sin(aside)];
  const [level, steep] = [Math.cos(down), Math.sin(down)];
  return { right: [c, s, 0], up: [-s * steep, c * steep, level], away: [-s * level, c * level, -steep] };
}

const PRISMS: readonly SolidId[] = ['triangular-prism', 'regular-prism', 'antiprism'];

/** No unit: the cosine up to which a face is seen edge on. */
const EDGE_ON = 1e-6;

const OUTLINE_MM = 0.4;
const EDGE_MM = 0.25;

const shape = (ring: readonly Vec2[], grey: Grey): readonly Mark[] => [
  { kind: 'fill', paths: [ringPath(ring)], grey },
  solidLine(ringPath(ring), EDGE_MM, BLACK),
];

/** Light from the upper left: the darkest face is still light enough for its edges to stand out on a bad copy. */
function toneOf({ normal }: FlatFace, { right, up }: Basis): Grey {
  const light = 0.5 + 0.35 * dot3(normal, up) - 0.35 * dot3(normal, right);
  return 0.78 + 0.22 * Math.min(1, Math.max(0, light));
}

const CURVED_GREY: Grey = 0.92;

function boxOf(points: readonly Vec2[]): { readonly least: Vec2; readonly most: Vec2 } {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { least: [Math.min(...xs), Math.min(...ys)], most: [Math.max(...xs), Math.max(...ys)] };
}
