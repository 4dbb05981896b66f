// A name on the roomiest face of a part: as large as there is room for, in one or a few lines, over no fold. Level on the
// page where that is as good, else along a side of the face.

import type { Vec2 } from '@cairnmark/geometry';
import { add2, dot2, length2, scale2, sub2 } from '@cairnmark/geometry';
import type { NetFace, NetPart } from '@cairnmark/nets';
import type { Writing } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import { LINE_SHARE } from '../text/measure.ts';
import { wrap } from '../text/wrap.ts';

/**
 * `turnRad`: by how much the part is turned on the page; the marks are on the part, before it is turned. `keepOffMm`: where
 * there is room, so far from the sides, because something else is written along them; 0 for nothing.
 */
export function nameOn(part: NetPart, name: string, turnRad: number, keepOffMm: number): readonly Writing[] {
  const face = part.faces.find(({ room }) => room === part.label) ?? part.faces[0];
  if (face === undefined) return [];
  const angles = anglesFor(face, turnRad);
  const clearMm = Math.min(CLEAR_MM, CLEAR_SHARE * face.room.radiusMm);
  return (
    largest(face, name, angles, Math.max(keepOffMm, clearMm)) ??
    shorter(name).reduce<readonly Writing[] | null>(
      (found, text) => found ?? largest(face, text, angles, clearMm),
      null,
    ) ??
    []
  );
}

/** mm. From writing to the nearest line, and as a share of the radius of the room on a small face. */
const CLEAR_MM = 2.5;
const CLEAR_SHARE = 0.1;

function largest(face: NetFace, text: string, angles: readonly number[], clearMm: number): readonly Writing[] | null {
  for (let sizeMm = MOST_MM; sizeMm >= LEAST_MM; sizeMm = Math.round((sizeMm - STEP_MM) * 10) / 10) {
    for (const angle of angles) {
      const lines = linesIn(face, { text, sizeMm, clearMm, angle });
      if (lines !== null) return written(lines, sizeMm, face.room.centre, angle);
    }
  }
  return null;
}

/** mm of font size. The least is read with young eyes at hand's length (common practice, no source). */
const MOST_MM = 4.4;
const LEAST_MM = 2.2;
const STEP_MM = 0.2;

/** The name, and for a face too small for it what is left of it, down to a letter. */
const shorter = (name: string): readonly string[] => [
  name,
  ...Array.from({ length: Math.max(0, name.length - 2) }, (_, k) => `${name.slice(0, name.length - 2 - k).trim()}.`),
];

/** Upright for who reads the page: level first, then along the sides of the face, the flattest first. */
function anglesFor({ kind, outline }: NetFace, turnRad: number): readonly number[] {
  const corners = [outline.start, ...outline.steps.map(({ to }) => to)];
  const sides = corners.map((corner, k) => sub2(corners[(k + 1) % corners.length] ?? corner, corner));
  const along = isStraight(kind)
    ? sides.filter((side) => length2(side) > 0).map(([x, y]) => readable(Math.atan2(y, x) + turnRad))
    : [];
  return [0, ...along.sort((a, b) => Math.abs(a) - Math.abs(b))].map((onPage) => onPage - turnRad);
}

/** The same line, read from left to right or, where it is upright, upwards. */
function readable(angle: number): number {
  const half = angle - Math.PI * Math.round(angle / Math.PI);
  return half <= -Math.PI / 2 + 1e-9 ? half + Math.PI : half;
}

const isStraight = (kind: NetFace['kind']): boolean => kind === 'polygon' || kind === 'rectangle';

interface Trial {
  readonly text: string;
  readonly sizeMm: number;
  readonly clearMm: number;
  readonly angle: number;
}

/** The text in as few lines as it fits in about the middle of the face's room; null when it does not. */
function linesIn(face: NetFace, { text, sizeMm, clearMm, angle }: Trial): readonly string[] | null {
  for (let count = 1; count <= MOST_LINES; count += 1) {
    const heightMm = (count - 1) * LINE_SHARE * sizeMm + INK_SHARE * sizeMm;
    const widthMm = widthFor(face, heightMm, angle, clearMm);
    if (widthMm <= 0) return null;
    const wrapped = wrap(text, { font: 'regular', sizeMm }, widthMm, sizeMm);
    if ('lines' in wrapped && wrapped.lines.length <= count) return wrapped.lines;
  }
  return null;
}

const MOST_LINES = 4;

/** No unit (of the font size). From the tail of g to the top of an accent, about the middle of small letters. */
const INK_SHARE = 1.2;

/** How wide a block of that height may be, its middle on that of the room, its lines along `angle`. */
function widthFor({ kind, outline, room }: NetFace, heightMm: number, angle: number, clearMm: number): number {
  if (!isStraight(kind)) {
    const radiusMm = Math.max(0, room.radiusMm - clearMm);
    return 2 * Math.sqrt(Math.max(0, radiusMm ** 2 - (heightMm / 2) ** 2));
  }
  const corners = [outline.start, ...outline.steps.map(({ to }) => to)];
  const along: Vec2 = [Math.cos(angle), Math.sin(angle)];
  const up: Vec2 = [-along[1], along[0]];
  const widths = corners.map((corner, k) => {
    const side = sub2(corners[(k + 1) % corners.length] ?? corner, corner);
    if (length2(side) === 0) return Number.POSITIVE_INFINITY;
    const inward = scale2([-side[1], side[0]], 1 / length2(side));
    const roomMm = dot2(inward, sub2(room.centre, corner)) - clearMm - (Math.abs(dot2(inward, up)) * heightMm) / 2;
    if (roomMm <= 0) return 0;
    return (2 * roomMm) / Math.max(Math.abs(dot2(inward, along)), 1e-9);
  });
  return Math.min(...widths);
}

function written(lines: readonly string[], sizeMm: number, centre: Vec2, turnRad: number): readonly Writing[] {
  const up: Vec2 = [-Math.sin(turnRad), Math.cos(turnRad)];
  return lines.map((text, k) => {
    const riseMm = ((lines.length - 1) / 2 - k) * LINE_SHARE * sizeMm - MIDDLE_SHARE * sizeMm;
    const at = add2(centre, scale2(up, riseMm));
    return { kind: 'writing', text, at, align: 'middle', font: 'regular', sizeMm, turnRad, grey: BLACK };
  });
}

/** No unit (of the font size). From where letters stand up to the middle of their ink. */
const MIDDLE_SHARE = 0.34;
