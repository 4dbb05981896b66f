// A solid on its own, put down for a drawing, and the one scale at which all solids of a kit are drawn.

import type { PlacedPiece, Solid } from '@cairnmark/geometry';
import { buildStack } from '@cairnmark/geometry';
import { familyOf } from './family.ts';
import { drawingOf } from './solid-drawing.ts';
import { VIEWS } from './view.ts';

/** Side of the square in which a solid of a kit is drawn, px. */
export const PICTURE_PX = 48;

/** px a mm: a 13 cm piece just fits into the square. */
const USUAL_SCALE = 0.35;

/** px. Room for the line round the drawing. */
const LINE_PX = 2;

/** One scale for the whole kit, px a mm, so that a taller piece is drawn taller; with large pieces all shrink together. */
export function kitScale(solids: Iterable<Solid>): number {
  let largestMm = 0;
  for (const solid of solids) {
    const [wide, high] = extentMm(solid);
    largestMm = Math.max(largestMm, wide, high);
  }
  return largestMm === 0 ? USUAL_SCALE : Math.min(USUAL_SCALE, (PICTURE_PX - LINE_PX) / largestMm);
}

/** The solid put down on a side, the usual one unless told, and turned as it is best told apart. */
export function putDown(solid: Solid, resting: string | undefined): PlacedPiece {
  const side = resting ?? solid.restings[0]?.id ?? '';
  const turnRad = familyOf(solid.id) === 'prism' ? PRISM_TURN_RAD : 0;
  const laid = { kind: solid.id, resting: side, xMm: 0, yMm: 0, turnRad };
  const stack = buildStack([laid], new Map([[solid.id, solid]]), 0);
  const piece = stack.ok ? stack.value.pieces[0] : undefined;
  if (piece === undefined) throw new RangeError(`a ${solid.id} has no side ${side}`);
  return piece;
}

/** 17 degrees: enough for the polygon of a prism to show on top of uneven sides. */
const PRISM_TURN_RAD = (17 * Math.PI) / 180;

function extentMm(solid: Solid): readonly [wide: number, high: number] {
  const { outline } = drawingOf(putDown(solid, undefined), VIEWS.corner);
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}
