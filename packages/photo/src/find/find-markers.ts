// Finds the markers of the ground sheet in a photograph, to a fraction of a pixel. What is dark against its surroundings is
// followed round; where that is a quadrilateral, its sides are fitted anew to the steps of brightness and its code is read.

import type { Vec2 } from '@cairnmark/geometry';
import type { Border } from '../image/borders.ts';
import { insidePx, outerBorders } from '../image/borders.ts';
import { darkMask, sumsOf } from '../image/dark.ts';
import { linearOf } from '../image/linear.ts';
import type { Grey, Photo } from '../image/photo.ts';
import { greyOf } from '../image/photo.ts';
import { DARKER, LEAST_MARKER_SIDE_PX, THRESHOLD_RADII } from '../tolerance.ts';
import type { Decoded } from './decode.ts';
import { decodeMarker } from './decode.ts';
import { quadrilateralOf } from './quadrilateral.ts';
import { refineQuad } from './refine-quad.ts';

/** A marker as found; corners clockwise as seen, begun at the upper left one as printed, pixels. */
export type FoundMarker = Decoded;

export interface FoundMarkers {
  readonly widthPx: number;
  readonly heightPx: number;
  /** In the order of their ids, each id once. An id that shows twice in different places is left out: one cannot be ours. */
  readonly markers: readonly FoundMarker[];
}

export function findMarkers(photo: Photo): FoundMarkers {
  return findMarkersIn(greyOf(photo));
}

/** The same in a picture of which only the brightness is at hand. */
export function findMarkersIn(grey: Grey): FoundMarkers {
  const sums = sumsOf(grey);
  const linear = linearOf(grey);
  const found = THRESHOLD_RADII.flatMap((share) => {
    const mask = darkMask(grey, sums, Math.max(3, Math.round(share * grey.width)), DARKER);
    const borders = outerBorders(mask, 4 * LEAST_MARKER_SIDE_PX - 8, 2 * (grey.width + grey.height));
    return borders.filter(worthALook).flatMap((border) => {
      const rough = quadrilateralOf(border, slackOf(border.length / 2), LEAST_MARKER_SIDE_PX / 2, 1);
      const quad = rough && refineQuad(linear, rough);
      return (quad && decodeMarker(grey, quad)) ?? [];
    });
  });
  return { widthPx: grey.width, heightPx: grey.height, markers: eachOnce(found) };
}

/** Lines and specks are not: a square seen at a slant still has a hundredth of its way round, squared, inside. */
function worthALook(border: Border): boolean {
  const lengthPx = border.length / 2;
  return insidePx(border) > LEAST_FULLNESS * lengthPx * lengthPx;
}

const LEAST_FULLNESS = 0.01;

/** px. A border of pixels is off its line by half a pixel, a blurred corner by more: a share of the way round. */
const slackOf = (lengthPx: number): number => Math.max(2, 0.03 * lengthPx);

function eachOnce(found: readonly FoundMarker[]): FoundMarker[] {
  const byId = new Map<number, FoundMarker | null>();
  for (const marker of found) {
    const known = byId.get(marker.id);
    if (known === undefined) byId.set(marker.id, marker);
    else if (known !== null && !sameplace(known, marker)) byId.set(marker.id, null);
    else if (known !== null && marker.wrongBits < known.wrongBits) byId.set(marker.id, marker);
  }
  return [...byId.values()].flatMap((marker) => marker ?? []).sort((a, b) => a.id - b.id);
}

function sameplace(a: FoundMarker, b: FoundMarker): boolean {
  const [first, second] = [middleOf(a.corners), middleOf(b.corners)];
  const side = Math.hypot(a.corners[0][0] - a.corners[2][0], a.corners[0][1] - a.corners[2][1]);
  return Math.hypot(first[0] - second[0], first[1] - second[1]) < side / 2;
}

const middleOf = (corners: readonly Vec2[]): Vec2 => [
  corners.reduce((sum, [x]) => sum + x, 0) / corners.length,
  corners.reduce((sum, [, y]) => sum + y, 0) / corners.length,
];
