// The ruler beside a build, and the level line from its highest point to the ruler, in px from the upper left corner of the canvas.

import type { PlacedPiece, Vec2, Vec3 } from '@cairnmark/geometry';
import { dot3, SAME_LENGTH_MM, supportPoint } from '@cairnmark/geometry';
import { linePath } from '../drawing/paths.ts';
import { NUMERAL_X_PX, RULER_WIDTH_PX, rulerLengthMm, rulerMarks, ticksPath } from '../drawing/ruler-marks.ts';
import { basisOf } from '../drawing/view.ts';
import type { Camera } from './camera.ts';
import { toCanvas } from './camera.ts';
import { buildRightMm, HEIGHT_GAP_PX, hasRuler, RULER_GAP_PX } from './fit.ts';
import type { Box } from './label-layout.ts';
import type { Mark } from './marks.ts';
import { boxPath, headPath } from './marks.ts';
import type { ScenePicture } from './picture.ts';
import type { Room } from './room.ts';

export interface RulerDrawing {
  readonly marks: readonly Mark[];
  readonly box: Box;
  /** Where the height is written, the left end and the middle of the line; null: nowhere. */
  readonly heightAt: Vec2 | null;
}

/** The ruler beside a build, level with its highest point in depth; null in a view that shows no heights. */
export function rulerDrawing(
  { pieces, unit, heightText }: ScenePicture,
  camera: Camera,
  room: Room,
): RulerDrawing | null {
  const { view, pxPerMm, centre, widthPx } = camera;
  if (!hasRuler(view)) return null;
  const top = highestPoint(pieces, camera);
  const rise = pxPerMm * Math.cos(view.elevationRad);
  const lengthMm = rulerLengthMm(top === null ? 0 : top[2], unit);
  const left = Math.round(widthPx / 2 + (buildRightMm(view, room) - centre[0]) * pxPerMm + RULER_GAP_PX);
  const [, foot] = toCanvas(camera, top === null ? [0, 0, 0] : [top[0], top[1], 0]);
  const marks = rulerMarks(unit, lengthMm, rise);
  const box = { left, top: foot - lengthMm * rise, width: RULER_WIDTH_PX, height: lengthMm * rise };
  const numerals = marks.numerals.map(
    ({ atMm, text }): Mark => ({
      kind: 'text',
      look: 'ruler-numeral',
      at: [left + NUMERAL_X_PX, foot - atMm * rise + 4],
      text,
    }),
  );
  const isRead = top !== null && heightText !== null;
  const levelPx = foot - (top?.[2] ?? 0) * rise;
  return {
    marks: [
      { kind: 'path', look: 'ruler-wood', d: boxPath(box) },
      { kind: 'path', look: 'ruler-tick', d: ticksPath(marks, [left, foot], rise) },
      ...numerals,
      ...(isRead ? levelMarks(toCanvas(camera, top), left, levelPx) : []),
    ],
    box,
    heightAt: isRead ? [left + RULER_WIDTH_PX + HEIGHT_GAP_PX, levelPx] : null,
  };
}

/** The highest point of all, where several are as high the rightmost in the view; null where nothing is built. */
function highestPoint(pieces: readonly PlacedPiece[], { view }: Camera): Vec3 | null {
  const { right } = basisOf(view);
  const heightMm = Math.max(...pieces.map(({ topMm }) => topMm));
  let rightmost: Vec3 | null = null;
  for (const { body, topMm } of pieces) {
    if (topMm < heightMm - SAME_LENGTH_MM) continue;
    const [x, y] = supportPoint(body, [right[0] * ASIDE, right[1] * ASIDE, 1]);
    const before = rightmost === null ? Number.NEGATIVE_INFINITY : dot3(rightmost, right);
    if (dot3([x, y, 0], right) > before) rightmost = [x, y, heightMm];
  }
  return rightmost;
}

/** No unit: leans "up" so little to the right that only points of a level top are told apart. */
const ASIDE = 1e-4;

function levelMarks([x]: Vec2, rulerLeft: number, levelPx: number): readonly Mark[] {
  const arrowAt: Vec2 = [rulerLeft + RULER_WIDTH_PX + 2, levelPx];
  const line: readonly Vec2[] = [
    [x + 3, levelPx],
    [rulerLeft, levelPx],
  ];
  return [
    { kind: 'path', look: 'level-line', d: linePath(line, 1) },
    { kind: 'path', look: 'level-arrow', d: headPath([arrowAt[0] + 9, levelPx], arrowAt, 9, 6) },
  ];
}
