// One soft shadow on the paper, under all that stands on it or near it, painted once for each build. mm.

import type { Outline, PlacedPiece } from '@cairnmark/geometry';
import { CanvasTexture, Mesh, MeshBasicMaterial, PlaneGeometry } from 'three';

export class ContactShadow {
  readonly mesh: Mesh;
  readonly #canvas = document.createElement('canvas');
  readonly #texture = new CanvasTexture(this.#canvas);
  readonly #material = new MeshBasicMaterial({ map: this.#texture, transparent: true, depthWrite: false });

  constructor() {
    this.mesh = new Mesh(new PlaneGeometry(), this.#material);
    this.mesh.renderOrder = -1;
    this.mesh.visible = false;
  }

  show(pieces: readonly PlacedPiece[]): void {
    const low = pieces.filter(({ bottomMm }) => bottomMm < FADES_AT_MM);
    const paint = this.#canvas.getContext('2d');
    this.mesh.visible = low.length > 0 && paint !== null;
    if (!this.mesh.visible || paint === null) return;
    const spans = low.map(({ outline }) => spanOf(outline));
    const minX = Math.min(...spans.map((span) => span.minX)) - SOFT_MM;
    const minY = Math.min(...spans.map((span) => span.minY)) - SOFT_MM;
    const width = Math.max(...spans.map((span) => span.maxX)) + SOFT_MM - minX;
    const height = Math.max(...spans.map((span) => span.maxY)) + SOFT_MM - minY;
    const pxPerMm = Math.min(PX_PER_MM, MOST_PX / Math.max(width, height));
    this.#canvas.width = Math.ceil(width * pxPerMm);
    this.#canvas.height = Math.ceil(height * pxPerMm);
    // The shapes themselves are drawn off the canvas; only their blurred shadows fall on it.
    const asideMm = 2 * width;
    paint.shadowBlur = SOFT_MM * pxPerMm;
    paint.shadowOffsetX = asideMm * pxPerMm;
    for (const { outline, bottomMm } of low) {
      paint.shadowColor = `rgba(16, 23, 31, ${DARKEST * (1 - bottomMm / FADES_AT_MM)})`;
      paint.beginPath();
      tracePath(paint, outline, (x, y) => [(x - minX - asideMm) * pxPerMm, (minY + height - y) * pxPerMm], pxPerMm);
      paint.fill();
    }
    this.#texture.dispose();
    this.#texture.needsUpdate = true;
    this.mesh.scale.set(width, height, 1);
    this.mesh.position.set(minX + width / 2, minY + height / 2, ON_PAPER_MM);
  }

  dispose(): void {
    this.#texture.dispose();
    this.#material.dispose();
    this.mesh.geometry.dispose();
  }
}

/** How far a shadow reaches past what casts it. */
const SOFT_MM = 26;
/** A piece this high up casts none. */
const FADES_AT_MM = 60;
/** Share of black under a piece that stands on the paper. */
const DARKEST = 0.75;
const PX_PER_MM = 0.75;
const MOST_PX = 512;
const ON_PAPER_MM = -0.3;

interface Span {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

function spanOf(outline: Outline): Span {
  if (outline.kind === 'disc') {
    const [x, y] = outline.centre;
    const r = outline.radiusMm;
    return { minX: x - r, minY: y - r, maxX: x + r, maxY: y + r };
  }
  const [xs, ys] = [outline.points.map(([x]) => x), outline.points.map(([, y]) => y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

function tracePath(
  paint: CanvasRenderingContext2D,
  outline: Outline,
  place: (x: number, y: number) => readonly [number, number],
  pxPerMm: number,
): void {
  if (outline.kind === 'disc') {
    const [x, y] = place(...outline.centre);
    paint.arc(x, y, outline.radiusMm * pxPerMm, 0, 2 * Math.PI);
    return;
  }
  for (const [x, y] of outline.points) paint.lineTo(...place(x, y));
  paint.closePath();
}
