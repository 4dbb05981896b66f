// Whether a part of a net fits a page, and how it is turned there. mm, rad.

import type { Vec2 } from '@cairnmark/geometry';
import type { Net, NetPart } from '../net.ts';
import { flattenPath } from '../path/measure.ts';
import type { Turned } from '../plane/place-on.ts';
import { placeOn, turnedBy } from '../plane/place-on.ts';
import { FIT_MM, FLATTEN_MM } from '../tolerance.ts';
import type { Frame } from './frame.ts';

/** Turned about the origin by `turnRad`, then moved by `shift`, a part lies in the middle of 0 to width, 0 to height. */
export interface Placing {
  readonly turnRad: number;
  readonly shift: Vec2;
  /** What the turned part takes. */
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * How to lay `part`, tabs included, on a page of the size of `frame`; null when it fits at no angle. Straight or upright
 * where it fits so, else at the angle that leaves most room.
 */
export function fits(part: NetPart, frame: Frame): Placing | null {
  const corners = flattenPath(part.cut, FLATTEN_MM);
  const tidy = [0, Math.PI / 2].map((turnRad) => turnedBy(corners, turnRad, frame.widthMm, frame.heightMm));
  const found = tidy.find((turned) => holds(turned, frame)) ?? placeOn(corners, frame.widthMm, frame.heightMm);
  return holds(found, frame) ? placingOf(found, frame) : null;
}

/** Whether every part of a net fits a page of its own. */
export const netFits = (net: Net, frame: Frame): boolean => net.parts.every((part) => fits(part, frame) !== null);

const holds = ({ sizeMm }: Turned, { widthMm, heightMm }: Frame): boolean =>
  sizeMm[0] <= widthMm + FIT_MM && sizeMm[1] <= heightMm + FIT_MM;

function placingOf({ turnRad, min, sizeMm }: Turned, { widthMm, heightMm }: Frame): Placing {
  const shift: Vec2 = [(widthMm - sizeMm[0]) / 2 - min[0], (heightMm - sizeMm[1]) / 2 - min[1]];
  return { turnRad, shift, widthMm: sizeMm[0], heightMm: sizeMm[1] };
}
