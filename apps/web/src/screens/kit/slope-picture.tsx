// A solid with a thick line along one of its slopes. It is drawn as large as it fits: nothing is compared here.

import type { Solid, Vec3 } from '@cairnmark/geometry';
import { useMemo } from 'preact/hooks';
import { DrawnSolid } from '../../drawing/drawn-solid.tsx';
import { colourToken, familyOf } from '../../drawing/family.ts';
import { putDown } from '../../drawing/kit-scale.ts';
import { linePath, ringCentre } from '../../drawing/paths.ts';
import { drawingOf } from '../../drawing/solid-drawing.ts';
import { basisOf, flatIn, VIEWS } from '../../drawing/view.ts';

const SQUARE_PX = 88;
/** px. Room for the thick line at the rim. */
const ROOM_PX = 6;

/** `line`: its ends in the solid's own frame, mm. */
export function SlopePicture({ solid, line }: { readonly solid: Solid; readonly line: readonly Vec3[] }) {
  const drawing = useMemo(() => drawingOf(putDown(solid, undefined), VIEWS.corner), [solid]);
  const [x, y] = ringCentre(drawing.outline);
  const reachMm = Math.max(...drawing.outline.map(([px, py]) => Math.max(Math.abs(px - x), Math.abs(py - y))));
  const half = SQUARE_PX / 2;
  const scale = (half - ROOM_PX) / reachMm;
  const ends = line.map((point) => flatIn(CORNER, point)).map(([across, up]) => [across, -up] as const);
  return (
    <svg
      className="kit-picture"
      width={SQUARE_PX}
      height={SQUARE_PX}
      viewBox={`${x * scale - half} ${y * scale - half} ${SQUARE_PX} ${SQUARE_PX}`}
      aria-hidden="true"
      focusable="false"
    >
      <DrawnSolid drawing={drawing} token={colourToken(familyOf(solid.id))} scale={scale} />
      <path className="kit-slope-edge" d={linePath(ends, scale)} />
      <path className="kit-slope-line" d={linePath(ends, scale)} />
    </svg>
  );
}

const CORNER = basisOf(VIEWS.corner);
