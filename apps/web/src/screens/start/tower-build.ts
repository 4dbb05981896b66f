// A small invented tower for the first screen, with its real sizes: a build like any other. mm.

import type { LaidPiece, Solid, SolidSpec, Stack } from '@cairnmark/geometry';
import { buildStack, makeSolid } from '@cairnmark/geometry';

/** Bottom to top; 40 cm high. */
export function towerBuild(): Stack {
  const pieces = TOWER.map(([, degrees], k): LaidPiece => {
    return { kind: `${k}`, resting: 'base', xMm: 0, yMm: 0, turnRad: (degrees * Math.PI) / 180 };
  });
  const solids = new Map(TOWER.map(([spec], k): readonly [string, Solid] => [`${k}`, solidOf(spec)]));
  const stack = buildStack(pieces, solids, 0);
  if (!stack.ok) throw new RangeError(`the tower is refused: ${JSON.stringify(stack.issues)}`);
  return stack.value;
}

const TOWER: readonly (readonly [spec: SolidSpec, turnDegrees: number])[] = [
  [{ solid: 'cube', sizes: { edge: 60 } }, 0],
  [{ solid: 'regular-prism', sizes: { sides: 6, edge: 35, height: 70 } }, 15],
  [{ solid: 'rectangular-prism', sizes: { length: 50, width: 50, height: 100 } }, 0],
  [{ solid: 'cylinder', sizes: { radius: 27, height: 90 } }, 0],
  [{ solid: 'cone', sizes: { radius: 27, height: 80 } }, 0],
];

function solidOf(spec: SolidSpec): Solid {
  const made = makeSolid(spec);
  if (!made.ok) throw new RangeError(`a solid of the tower is refused: ${JSON.stringify(made.issues)}`);
  return made.value;
}
