// One piece on the screen: its surface, its edges, the outline of what is curved, and a thick outline when it is picked.

import type { Basis, Body, PlacedPiece, Rotation, Vec3 } from '@cairnmark/geometry';
import { rotate, silhouetteOf } from '@cairnmark/geometry';
import { Group, Matrix4, Mesh } from 'three';
import type { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { acceleratedRaycast } from 'three-mesh-bvh';
import { familyOf } from '../drawing/family.ts';
import type { View } from '../drawing/view.ts';
import { basisOf } from '../drawing/view.ts';
import { fatLines, linesOf, redraw, ringSegments } from './fat-lines.ts';
import type { Look, Materials } from './materials.ts';
import type { SolidShape } from './solid-shapes.ts';

export class PieceModel {
  readonly group = new Group();
  readonly shape: SolidShape;
  readonly surface: Mesh;
  readonly #mask: Mesh;
  readonly #edges: LineSegments2;
  readonly #outline: LineSegments2;
  readonly #picked: LineSegments2;
  readonly #materials: Materials;
  #piece: PlacedPiece;
  #look: Look = 'plain';
  #isPicked = false;
  /** What the outlines were drawn for. */
  #aimed = '';

  constructor(piece: PlacedPiece, shape: SolidShape, materials: Materials) {
    this.#piece = piece;
    this.shape = shape;
    this.#materials = materials;
    this.surface = new Mesh(shape.surface);
    this.surface.raycast = acceleratedRaycast;
    this.#mask = new Mesh(shape.surface, materials.mask);
    this.#mask.renderOrder = ORDER.mask;
    this.#mask.raycast = () => {};
    this.#edges = linesOf(shape.edges, materials.lines.plain);
    this.#outline = fatLines([], materials.lines.plain);
    this.#picked = fatLines([], materials.picked);
    this.#picked.renderOrder = ORDER.picked;
    this.group.matrixAutoUpdate = false;
    this.group.add(this.surface, this.#mask, this.#edges, this.#outline, this.#picked);
  }

  show(piece: PlacedPiece, look: Look, isPicked: boolean): void {
    this.#piece = piece;
    this.#look = look;
    this.#isPicked = isPicked;
    this.surface.material = this.#materials.surface(look, familyOf(piece.solid.id));
    this.surface.renderOrder = ORDER[look];
    this.#mask.visible = look !== 'plain';
    for (const lines of [this.#edges, this.#outline]) {
      lines.material = this.#materials.lines[look];
      lines.renderOrder = look === 'plain' ? ORDER.plain : ORDER.lines;
    }
    // The lines of a piece that may not be put there are seen through others: its outline is enough.
    this.#edges.visible = this.shape.hasEdges && look !== 'refused';
    this.lift(0);
  }

  /** So much above its place, mm. */
  lift(byMm: number): void {
    const { rotation: r, shift } = this.#piece;
    this.group.matrix = new Matrix4(
      ...[r[0], r[1], r[2], shift[0], r[3], r[4], r[5], shift[1]],
      ...[r[6], r[7], r[8], shift[2] + byMm, 0, 0, 0, 1],
    );
    this.group.matrixWorldNeedsUpdate = true;
  }

  /** Draws the outlines for this way of looking. */
  aim(view: View): void {
    const { rotation, solid } = this.#piece;
    const hasOutline = solid.curvedSurfaces.length > 0 || this.#look === 'refused';
    const aimed = JSON.stringify([view, rotation, hasOutline, this.#isPicked]);
    if (aimed === this.#aimed) return;
    this.#aimed = aimed;
    const isSeen = hasOutline || this.#isPicked;
    const ring = isSeen ? ringSegments(ownSilhouette(solid.body, rotation, basisOf(view))) : [];
    redraw(this.#outline, hasOutline ? ring : []);
    redraw(this.#picked, this.#isPicked ? ring : []);
  }

  dispose(): void {
    this.#outline.geometry.dispose();
    this.#picked.geometry.dispose();
  }
}

/** What is drawn later covers what was drawn before where nothing else decides. */
export const ORDER = {
  plain: 0,
  pale: 2,
  heldUp: 3,
  ghost: 5,
  refused: 5,
  mask: 7,
  lines: 8,
  footprint: 9,
  picked: 9,
} as const;

/** The outline as points of the solid in its own frame. */
function ownSilhouette(body: Body, r: Rotation, { right, up, away }: Basis): readonly Vec3[] {
  const back: Rotation = [r[0], r[3], r[6], r[1], r[4], r[7], r[2], r[5], r[8]];
  return silhouetteOf(body, { right: rotate(back, right), up: rotate(back, up), away: rotate(back, away) });
}
