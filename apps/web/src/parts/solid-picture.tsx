// A solid as a small drawing, on a side of it that it can rest on. It says nothing to a screen reader: its name is beside it.

import type { Solid } from '@cairnmark/geometry';
import { useMemo } from 'preact/hooks';
import { DrawnSolid } from '../drawing/drawn-solid.tsx';
import { colourToken, familyOf } from '../drawing/family.ts';
import { PICTURE_PX, putDown } from '../drawing/kit-scale.ts';
import { ringCentre } from '../drawing/paths.ts';
import { drawingOf } from '../drawing/solid-drawing.ts';
import { VIEWS } from '../drawing/view.ts';
import './solid-picture.css';

interface SolidPictureOf {
  readonly solid: Solid;
  /** Id of the side it rests on; its usual one when left out. */
  readonly resting?: string;
  /** px a mm, from `kitScale`: the same for all solids that are seen together. */
  readonly scale: number;
  /** See `DrawnSolid`. */
  readonly name?: string;
}

export function SolidPicture({ solid, resting, scale, name }: SolidPictureOf) {
  const drawing = useMemo(() => drawingOf(putDown(solid, resting), VIEWS.corner), [solid, resting]);
  const [x, y] = ringCentre(drawing.outline);
  const half = PICTURE_PX / 2;
  return (
    <svg
      className="solid-picture"
      width={PICTURE_PX}
      height={PICTURE_PX}
      viewBox={`${x * scale - half} ${y * scale - half} ${PICTURE_PX} ${PICTURE_PX}`}
      aria-hidden="true"
      focusable="false"
    >
      <DrawnSolid drawing={drawing} token={colourToken(familyOf(solid.id))} scale={scale} name={name} />
    </svg>
  );
}
