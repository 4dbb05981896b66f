// The table top: a sheet of squared paper, the soft shadow under the build, the footprint where it hangs out past its base,
// and, where one looks level, the same paper standing behind the build. mm, frame of the table.

import type { DrawnPart, PlacedPiece, Vec3 } from '@cairnmark/geometry';
import { CONTACT_MM, drawnUnion } from '@cairnmark/geometry';
import { Group, Matrix4, Vector3 } from 'three';
import type { RulerUnit } from '../drawing/ruler-marks.ts';
import type { Rectangle } from '../drawing/sheet.ts';
import { rectangleCorners } from '../drawing/sheet.ts';
import type { View } from '../drawing/view.ts';
import { basisOf, flatIn } from '../drawing/view.ts';
import { isAbove, isLevel } from './camera.ts';
import type { Segment3 } from './fat-lines.ts';
import { fatLines, redraw, ringSegments } from './fat-lines.ts';
import type { Segment } from './hatch.ts';
import { hatchPast, rimPast } from './hatch.ts';
import type { Materials } from './materials.ts';
import { ORDER } from './piece-model.ts';
import { ContactShadow } from './shadow.ts';
import { SheetModel } from './sheet-model.ts';

export class Paper {
  readonly group = new Group();
  readonly #sheet: SheetModel;
  /** The paper that stands behind the build where one looks level. */
  readonly #behind: SheetModel;
  readonly #shadow = new ContactShadow();
  readonly #hatch;
  readonly #rim;
  readonly #footprint;
  #laid: Laid | null = null;
  #pieces: readonly PlacedPiece[] = [];

  constructor(materials: Materials) {
    this.#sheet = new SheetModel(materials);
    this.#behind = new SheetModel(materials);
    this.#sheet.group.position.z = -UNDER_PIECES_MM;
    this.#hatch = fatLines([], materials.hatch);
    this.#rim = fatLines([], materials.rim);
    this.#footprint = fatLines([], materials.footprint);
    this.#footprint.renderOrder = ORDER.footprint;
    this.group.add(this.#sheet.group, this.#behind.group, this.#shadow.mesh, this.#hatch, this.#rim, this.#footprint);
  }

  /** Lays the paper, and draws what the pieces leave on it. */
  show(pieces: readonly PlacedPiece[], laid: Laid): void {
    this.#laid = laid;
    this.#sheet.show(laid.sheet, laid.unit);
    const isShown =
      pieces.length === this.#pieces.length && pieces.every((piece, k) => isSamePlace(piece, this.#pieces[k]));
    if (isShown) return;
    this.#pieces = pieces;
    this.#shadow.show(pieces);
    const outlines = pieces.map(({ outline }) => outline);
    const union = drawnUnion(outlines, CONTACT_MM);
    const footprint = union.ok ? union.value : [];
    const onTable = pieces.filter(({ bottomMm }) => bottomMm <= CONTACT_MM);
    const base = onTable.map(({ outline }) => outline);
    redraw(this.#hatch, hatchPast(footprint, base, HATCH_MM).map(onPaper));
    redraw(this.#rim, rimPast(footprint, base).map(onPaper));
    redraw(this.#footprint, rims(footprint, Math.max(0, ...pieces.map(({ topMm }) => topMm))));
  }

  /** What is seen depends on how far one looks down. */
  aim(view: View): void {
    this.#footprint.visible = isAbove(view);
    this.#hatch.visible = !isAbove(view);
    this.#rim.visible = !isAbove(view);
    this.#behind.group.visible = isLevel(view);
    if (this.#behind.group.visible && this.#laid !== null) this.#standBehind(view, this.#laid);
  }

  dispose(): void {
    this.#sheet.dispose();
    this.#behind.dispose();
    this.#shadow.dispose();
    for (const lines of [this.#hatch, this.#rim, this.#footprint]) lines.geometry.dispose();
  }

  #standBehind(view: View, { sheet, heightMm, unit }: Laid): void {
    const basis = basisOf(view);
    const across = rectangleCorners(sheet).map((corner) => flatIn(basis, corner)[0]);
    this.#behind.show({ minX: Math.min(...across), minY: 0, maxX: Math.max(...across), maxY: heightMm }, unit);
    const [right, away] = [new Vector3(...basis.right), new Vector3(...basis.away)];
    const place = new Matrix4().makeBasis(right, new Vector3(0, 0, 1), away.clone().negate());
    this.#behind.group.matrixAutoUpdate = false;
    this.#behind.group.matrix = place.setPosition(away.multiplyScalar(BEHIND_MM));
    this.#behind.group.matrixWorldNeedsUpdate = true;
  }
}

/** The sheet on the table, and how high the one behind it is. */
export interface Laid {
  readonly sheet: Rectangle;
  readonly heightMm: number;
  readonly unit: RulerUnit;
}

const BEHIND_MM = 8000;
/** So little that it is not seen, and enough for the lower edges of pieces to win over the squares. */
const UNDER_PIECES_MM = 0.4;
const HATCH_MM = 5;
const ON_PAPER_MM = -0.2;

/** A stack that is built anew has new pieces, most of them where they were. */
const isSamePlace = (a: PlacedPiece, b: PlacedPiece | undefined): boolean =>
  b !== undefined &&
  a.solid === b.solid &&
  a.shift.every((value, k) => value === b.shift[k]) &&
  a.rotation.every((value, k) => value === b.rotation[k]);

const onPaper = ([from, to]: Segment): Segment3 => [
  [...from, ON_PAPER_MM],
  [...to, ON_PAPER_MM],
];

const rims = (parts: readonly DrawnPart[], zMm: number): readonly Segment3[] =>
  parts
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .flatMap((ring) => ringSegments(ring.map(([x, y]): Vec3 => [x, y, zMm])));
