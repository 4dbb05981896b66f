// A sheet of squared paper: a white ground with thin and bold lines. mm.

import { Group, Mesh, PlaneGeometry } from 'three';
import type { RulerUnit } from '../drawing/ruler-marks.ts';
import type { Rectangle } from '../drawing/sheet.ts';
import { rectangleCorners, sheetLines } from '../drawing/sheet.ts';
import type { Segment3 } from './fat-lines.ts';
import { fatLines, redraw, ringSegments } from './fat-lines.ts';
import type { Materials } from './materials.ts';

export class SheetModel {
  readonly group = new Group();
  readonly #leaf;
  readonly #thin;
  readonly #bold;
  #shown = '';

  constructor(materials: Materials) {
    this.#leaf = new Mesh(new PlaneGeometry(), materials.leaf);
    this.#thin = fatLines([], materials.square);
    this.#bold = fatLines([], materials.squareBold);
    this.group.add(this.#leaf, this.#thin, this.#bold);
  }

  show(sheet: Rectangle, unit: RulerUnit): void {
    const shown = JSON.stringify([sheet, unit]);
    if (shown === this.#shown) return;
    this.#shown = shown;
    const { minX, minY, maxX, maxY } = sheet;
    this.#leaf.scale.set(maxX - minX, maxY - minY, 1);
    this.#leaf.position.set((minX + maxX) / 2, (minY + maxY) / 2, 0);
    const lines = sheetLines(sheet, unit);
    const flat = (isBold: boolean): readonly Segment3[] =>
      lines
        .filter((line) => line.isBold === isBold)
        .map(
          ({ from, to }): Segment3 => [
            [...from, 0],
            [...to, 0],
          ],
        );
    redraw(this.#thin, flat(false));
    redraw(this.#bold, [...flat(true), ...ringSegments(rectangleCorners(sheet))]);
  }

  dispose(): void {
    for (const { geometry } of [this.#leaf, this.#thin, this.#bold]) geometry.dispose();
  }
}
