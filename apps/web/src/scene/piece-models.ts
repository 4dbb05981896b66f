// All pieces on the screen. A model is kept as long as its piece keeps its shape, so that a move only moves it.

import type { PlacedPiece } from '@cairnmark/geometry';
import type { Mesh } from 'three';
import { Group } from 'three';
import type { View } from '../drawing/view.ts';
import type { Look, Materials } from './materials.ts';
import type { ScenePicture } from './picture.ts';
import { PieceModel } from './piece-model.ts';
import { SolidShapes } from './solid-shapes.ts';

export class PieceModels {
  readonly group = new Group();
  readonly #shapes = new SolidShapes();
  readonly #materials: Materials;
  readonly #models = new Map<number, PieceModel>();
  #ghost: PieceModel | null = null;

  constructor(materials: Materials) {
    this.#materials = materials;
  }

  show({ pieces, picked, ghost, why }: ScenePicture): void {
    const moving = new Set(why?.overlay.falls === true ? why.overlay.marks.flatMap((mark) => mark.pieces) : []);
    const indices = new Set(pieces.map(({ index }) => index));
    for (const [index, model] of this.#models) if (!indices.has(index)) this.#takeOff(index, model);
    for (const piece of pieces) {
      const model = this.#modelFor(piece, this.#models.get(piece.index));
      this.#models.set(piece.index, model);
      model.show(piece, moving.has(piece.index) ? 'pale' : 'plain', piece.index === picked);
    }
    this.#showGhost(ghost);
  }

  /** Lifts a piece off its place, mm; 0 puts it back. */
  lift(index: number, byMm: number): void {
    this.#models.get(index)?.lift(byMm);
  }

  aim(view: View): void {
    for (const model of this.#models.values()) model.aim(view);
    this.#ghost?.aim(view);
  }

  /** Surfaces that can be pointed at, by index of the piece; never the ghost. */
  surfaces(): ReadonlyMap<Mesh, number> {
    // Places may have changed since they were drawn.
    this.group.updateMatrixWorld();
    return new Map([...this.#models].map(([index, { surface }]) => [surface, index]));
  }

  dispose(): void {
    for (const [index, model] of this.#models) this.#takeOff(index, model);
    this.#showGhost(null);
    this.#shapes.dispose();
  }

  #showGhost(ghost: ScenePicture['ghost']): void {
    if (ghost === null) {
      this.#ghost?.dispose();
      this.#ghost?.group.removeFromParent();
      this.#ghost = null;
      return;
    }
    const look: Look = ghost.isRefused ? 'refused' : 'ghost';
    this.#ghost = this.#modelFor(ghost.piece, this.#ghost ?? undefined);
    this.#ghost.show(ghost.piece, look, false);
  }

  #modelFor(piece: PlacedPiece, before: PieceModel | undefined): PieceModel {
    const shape = this.#shapes.of(piece.solid);
    if (before?.shape === shape) return before;
    before?.dispose();
    before?.group.removeFromParent();
    const model = new PieceModel(piece, shape, this.#materials);
    this.group.add(model.group);
    return model;
  }

  #takeOff(index: number, model: PieceModel): void {
    model.dispose();
    model.group.removeFromParent();
    this.#models.delete(index);
  }
}
