// Where the camera stands so that a build, its ruler and room to lay pieces beside it are in sight. mm and px.

import type { Vec2 } from '@cairnmark/geometry';
import type { RulerUnit } from '../drawing/ruler-marks.ts';
import { RULER_WIDTH_PX, rulerLengthMm } from '../drawing/ruler-marks.ts';
import { rectangleCorners } from '../drawing/sheet.ts';
import type { View } from '../drawing/view.ts';
import { basisOf, flatIn } from '../drawing/view.ts';
import type { Camera, Size } from './camera.ts';
import type { Box } from './label-layout.ts';
import type { Room } from './room.ts';

/** px that lie under other things than the scene, at each side of the canvas. */
export interface Inset {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

export interface FitRequest extends Size {
  readonly view: View;
  readonly room: Room;
  readonly inset: Inset;
  readonly unit: RulerUnit;
  /** Width of the height that is written beside the ruler. */
  readonly heightLabelPx: number;
}

export function fitCamera(request: FitRequest): Camera {
  const { view, room, inset, unit, widthPx, heightPx } = request;
  const extent = extentOf(view, room, unit);
  const besidePx = hasRuler(view) ? rulerBlockPx(request.heightLabelPx) : 0;
  const free = clearOf(inset, request);
  const clear = { widthPx: Math.max(LEAST_PX, free.width), heightPx: Math.max(LEAST_PX, free.height) };
  const pxPerMm = Math.min(
    MOST_PX_PER_MM,
    clear.heightPx / (extent.top - extent.bottom),
    clear.widthPx / (Math.max(extent.right, extent.buildRight) - extent.left),
    Math.max(LEAST_PX, clear.widthPx - besidePx) / (extent.buildRight - extent.left),
  );
  const right = Math.max(extent.right, extent.buildRight + besidePx / pxPerMm);
  const middle: Vec2 = [(extent.left + right) / 2, (extent.bottom + extent.top) / 2];
  return {
    view,
    pxPerMm,
    centre: [
      middle[0] - (inset.left - inset.right) / 2 / pxPerMm,
      middle[1] + (inset.top - inset.bottom) / 2 / pxPerMm,
    ],
    widthPx,
    heightPx,
  };
}

/** From above a height cannot be seen, so no ruler stands there. */
export const hasRuler = ({ elevationRad }: View): boolean => elevationRad < STEEP_RAD;

/** rad. 60 degrees: half the height of a thing is still seen. */
const STEEP_RAD = Math.PI / 3;

/** px from the build to the left side of the ruler. */
export const RULER_GAP_PX = 36;
/** px from the ruler to the text beside it, the arrow between them. */
export const HEIGHT_GAP_PX = 16;

const rulerBlockPx = (labelPx: number): number => RULER_GAP_PX + RULER_WIDTH_PX + HEIGHT_GAP_PX + labelPx;

/** Where the ruler may stand: right of everything that is built, mm to the right in the view. */
export const buildRightMm = (view: View, room: Room): number =>
  Math.max(...rectangleCorners(room.ground).map((corner) => flatIn(basisOf(view), corner)[0]));

/** The part of the canvas that nothing lies over, but for a narrow margin. */
export function clearOf({ top, right, bottom, left }: Inset, { widthPx, heightPx }: Size): Box {
  return {
    left: left + EDGE_PX,
    top: top + EDGE_PX,
    width: widthPx - left - right - 2 * EDGE_PX,
    height: heightPx - top - bottom - 2 * EDGE_PX,
  };
}

const EDGE_PX = 6;

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly buildRight: number;
}

function extentOf(view: View, room: Room, unit: RulerUnit): Extent {
  const basis = basisOf(view);
  const { ground } = room;
  const besideMm = hasRuler(view) ? BESIDE_MM : BESIDE_ABOVE_MM;
  const beside = {
    minX: ground.minX - besideMm,
    minY: ground.minY - besideMm,
    maxX: ground.maxX + besideMm,
    maxY: ground.maxY + besideMm,
  };
  const flat = rectangleCorners(beside).map((corner) => flatIn(basis, corner));
  const build = rectangleCorners(ground).map((corner) => flatIn(basis, corner));
  const rise = rulerLengthMm(room.heightMm, unit) * basis.up[2];
  return {
    left: Math.min(...flat.map(([x]) => x)),
    right: Math.max(...flat.map(([x]) => x)),
    buildRight: Math.max(...build.map(([x]) => x)),
    bottom: Math.min(...flat.map(([, y]) => y)) - UNDER_MM * basis.up[2],
    top: Math.max(...flat.map(([, y]) => y), ...build.map(([, y]) => y + rise)),
  };
}

/** Room beside the build to lay a piece; more where nothing else takes up the canvas. */
const BESIDE_MM = 40;
const BESIDE_ABOVE_MM = 85;
/** Below the table, where one looks level at it. */
const UNDER_MM = 12;
const MOST_PX_PER_MM = 2.4;
/** A canvas that is not yet laid out has no size. */
const LEAST_PX = 40;
