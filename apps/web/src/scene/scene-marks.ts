// From a picture and a camera to all that is drawn and written over the canvas. px from its upper left corner.

import type { PlacedPiece, Vec2, Vec3 } from '@cairnmark/geometry';
import { dot3, silhouetteOf } from '@cairnmark/geometry';
import { linePath } from '../drawing/paths.ts';
import type { Rectangle } from '../drawing/sheet.ts';
import { rectangleCorners, sheetUnder } from '../drawing/sheet.ts';
import { basisOf } from '../drawing/view.ts';
import type { Camera } from './camera.ts';
import { isLevel, toCanvas } from './camera.ts';
import type { Box } from './label-layout.ts';
import type { Mark } from './marks.ts';
import { boxRound } from './marks.ts';
import type { Named } from './overlay-layer.ts';
import type { OverlayMark } from './overlay-of.ts';
import type { ScenePicture } from './picture.ts';
import type { Room } from './room.ts';
import { rulerDrawing } from './ruler-drawing.ts';
import { whyMarks } from './why-marks.ts';

export interface SceneMarks {
  readonly marks: readonly Mark[];
  readonly heightAt: Vec2 | null;
  readonly rulerBox: Box | null;
}

export function marksOf(picture: ScenePicture, camera: Camera, room: Room): SceneMarks {
  const { unit, why } = picture;
  const ruler = rulerDrawing(picture, camera, room);
  const tone = why?.overlay.isBad === true ? 'bad' : 'ink';
  return {
    marks: [
      ...tableLine(camera, sheetUnder(room.ground, unit)),
      ...(ruler?.marks ?? []),
      ...(why?.overlay.marks ?? []).flatMap((mark) => whyMarks(camera, mark, tone)),
    ],
    heightAt: ruler?.heightAt ?? null,
    rulerBox: ruler?.box ?? null,
  };
}

/** The texts that name marks, and the one beside the ghost. */
export function namedOf({ why, ghost }: ScenePicture, camera: Camera): readonly Named[] {
  const named: Named[] = [];
  const name = (text: string | null, at: Vec3 | null, look: string, isSpare = false): void => {
    if (text !== null && at !== null) named.push({ text, anchor: toCanvas(camera, at), look, isSpare });
  };
  if (ghost !== null) name(ghost.label, topOf(ghost.piece), ghost.isRefused ? 'bad' : 'ink');
  if (why === null) return named;
  const { labels, overlay } = why;
  overlay.marks.forEach((mark, k) => {
    // The first are always named; the same names stand at the others where there is room.
    const isSpare = k > 0;
    name(labels.balance, mark.balance, 'ink', isSpare);
    // Where they do not fall, the pieces hide what holds them up.
    if (overlay.falls) name(labels.heldUp, middleOf(mark.heldUp[0] ?? []), 'ink', isSpare);
    name(
      isPoint(mark) ? labels.point : labels.edge,
      middleOf(mark.hinge ?? []),
      overlay.isBad ? 'bad' : 'ink',
      isSpare,
    );
  });
  return named;
}

const isPoint = ({ hinge }: OverlayMark): boolean => hinge?.[0].every((at, k) => at === hinge[1][k]) === true;

/** What texts should not cover: pieces, ruler, arrows. */
export function boxesToAvoid(
  { pieces, ghost, why }: ScenePicture,
  camera: Camera,
  more: readonly (Box | null)[],
): readonly Box[] {
  const basis = basisOf(camera.view);
  const shown = ghost === null ? pieces : [...pieces, ghost.piece];
  const round = (points: readonly Vec3[]): Box => boxRound(points.map((point) => toCanvas(camera, point)));
  return [
    ...shown.map(({ body }) => round(silhouetteOf(body, basis))),
    ...(why?.overlay.marks ?? []).filter(({ arrow }) => arrow.length > 0).map(({ arrow }) => round(arrow)),
    ...more.flatMap((box) => (box === null ? [] : [box])),
  ];
}

/** The table, where one looks level at it: as wide as the sheet on it. */
function tableLine(camera: Camera, sheet: Rectangle): readonly Mark[] {
  if (!isLevel(camera.view)) return [];
  const { right } = basisOf(camera.view);
  const across = rectangleCorners(sheet).map((corner) => dot3(corner, right));
  const ends = [Math.min(...across), Math.max(...across)].map((along) =>
    toCanvas(camera, [right[0] * along, right[1] * along, 0]),
  );
  return [{ kind: 'path', look: 'table-line', d: linePath(ends, 1) }];
}

const topOf = ({ shift, topMm }: PlacedPiece): Vec3 => [shift[0], shift[1], topMm];

function middleOf(points: readonly Vec3[]): Vec3 | null {
  if (points.length === 0) return null;
  const sum = points.reduce<Vec3>((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [0, 0, 0]);
  return [sum[0] / points.length, sum[1] / points.length, sum[2] / points.length];
}
