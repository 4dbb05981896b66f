// A kind of piece, drawn to the one scale of the kit, with a dimension line that shows its height.

import type { Solid } from '@cairnmark/geometry';
import { useMemo } from 'preact/hooks';
import { DrawnSolid } from '../../drawing/drawn-solid.tsx';
import { colourToken, familyOf } from '../../drawing/family.ts';
import { PICTURE_PX, putDown } from '../../drawing/kit-scale.ts';
import { ringCentre } from '../../drawing/paths.ts';
import { drawingOf } from '../../drawing/solid-drawing.ts';
import { basisOf, flatIn, VIEWS } from '../../drawing/view.ts';
import '../../drawing/drawing.css';

/** Drawings of the table are so many times as large as those of a shelf, and their square too. */
export const LARGER = 1.25;

const SQUARE_PX = PICTURE_PX * LARGER;
/** px. Room for the dimension line and its number, left of the drawing. */
const LINE_PX = 46;
/** px. Half a dash at the ends of the dimension line. */
const DASH_PX = 4;

export function KindPicture({
  solid,
  scale,
  height,
}: {
  readonly solid: Solid;
  readonly scale: number;
  /** As it is read, without its unit. */
  readonly height: string;
}) {
  const drawing = useMemo(() => drawingOf(putDown(solid, undefined), VIEWS.corner), [solid]);
  const [x, y] = ringCentre(drawing.outline);
  const half = SQUARE_PX / 2;
  const left = x * scale - half - LINE_PX;
  const at = left + LINE_PX - 2 * DASH_PX;
  const [low, high] = [0, restingHeightMm(solid)].map((zMm) => -flatIn(CORNER, [0, 0, zMm])[1] * scale);
  return (
    <svg
      className="kit-picture"
      width={SQUARE_PX + LINE_PX}
      height={SQUARE_PX}
      viewBox={`${left} ${y * scale - half} ${SQUARE_PX + LINE_PX} ${SQUARE_PX}`}
      aria-hidden="true"
      focusable="false"
    >
      <DrawnSolid drawing={drawing} token={colourToken(familyOf(solid.id))} scale={scale} />
      <path
        className="kit-dimension"
        d={`M${at} ${high}V${low}M${at - DASH_PX} ${high}h${2 * DASH_PX}M${at - DASH_PX} ${low}h${2 * DASH_PX}`}
      />
      <text className="kit-dimension-text" x={at - 2 * DASH_PX} y={((low ?? 0) + (high ?? 0)) / 2}>
        {height}
      </text>
    </svg>
  );
}

/** mm, as it usually stands. */
export const restingHeightMm = ({ restings: [usual] }: Solid): number => usual?.heightMm ?? 0;

const CORNER = basisOf(VIEWS.corner);
