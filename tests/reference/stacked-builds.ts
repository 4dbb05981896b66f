// Layouts for the tests of stacks, in a few words. Lengths mm, turns rad.

import type { LaidPiece, SolidSpec, SolidsByKind, Stack } from '@cairnmark/geometry';
import { buildStack, makeSolid } from '@cairnmark/geometry';

/** The solids of a kit; impossible sizes are an error of the test. */
export function solidsOf(specs: Readonly<Record<string, SolidSpec>>): SolidsByKind {
  return new Map(
    Object.entries(specs).map(([kind, spec]) => {
      const made = makeSolid(spec);
      if (!made.ok) throw new Error(`${kind}: ${JSON.stringify(made.issues)}`);
      return [kind, made.value];
    }),
  );
}

export const box = (length: number, width: number, height: number): SolidSpec => ({
  solid: 'rectangular-prism',
  sizes: { length, width, height },
});
export const cube = (edge: number): SolidSpec => ({ solid: 'cube', sizes: { edge } });
export const sphere = (radius: number): SolidSpec => ({ solid: 'sphere', sizes: { radius } });
export const cylinder = (radius: number, height: number): SolidSpec => ({
  solid: 'cylinder',
  sizes: { radius, height },
});
export const cone = (radius: number, height: number): SolidSpec => ({ solid: 'cone', sizes: { radius, height } });

/** A piece on its spot; on its base unless told otherwise. */
export function put(kind: string, xMm: number, yMm: number, more: Partial<LaidPiece> = {}): LaidPiece {
  return { kind, resting: 'base', xMm, yMm, turnRad: 0, ...more };
}

/** The stack of a layout; a refusal is an error of the test. */
export function stackOf(pieces: readonly LaidPiece[], solids: SolidsByKind): Stack {
  const built = buildStack(pieces, solids, 0);
  if (!built.ok) throw new Error(`refused: ${JSON.stringify(built.issues)}`);
  return built.value;
}
