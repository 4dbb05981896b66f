// What the tests of this folder share: solids and builds to write, and the one part of a browser that three's exporter asks for.

import type { Solid } from '@cairnmark/geometry';
import { CATALOGUE, IDENTITY } from '@cairnmark/geometry';
import type { ModelPiece } from './model.ts';

export const solids = Object.values(CATALOGUE).map(({ make, example }): Solid => {
  const made = make(example);
  if (!made.ok) throw new RangeError(JSON.stringify(made.issues));
  return made.value;
});

export const alone = (solid: Solid): ModelPiece => {
  return { name: solid.id, colour: '#6e9fdd', solid, rotation: IDENTITY, shift: [0, 0, 0] };
};

/** Reads a blob as a browser does, by the part of Node that does so. The browser's own is at work in tests/e2e. */
export class ReaderOfBlobs {
  result: ArrayBuffer | null = null;
  onloadend: (() => void) | null = null;

  readAsArrayBuffer(blob: Blob): void {
    void blob.arrayBuffer().then((bytes) => {
      this.result = bytes;
      this.onloadend?.();
    });
  }
}
