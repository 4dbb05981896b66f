// Names that codes tell by their place in a list. Codes are read by devices with other versions of this program: the order
// stays as it is, and a new name goes to the end, where the compiler asks for it.

import type { Hold, MeasureId } from '@cairnmark/geometry';
import type { Part } from './part.ts';
import { oneOf } from './part.ts';
import { word } from './texts.ts';

const MEASURES = Object.keys({
  height: true,
  'footprint-area': true,
  'footprint-perimeter': true,
  'footprint-inner-perimeter': true,
  'footprint-parts': true,
  'base-area': true,
  'base-perimeter': true,
  'courtyard-area': true,
  'hull-area': true,
  volume: true,
  paper: true,
  'touchable-surface': true,
  pieces: true,
  kinds: true,
  'flat-faces': true,
  'curved-surfaces': true,
  'straight-edges': true,
  'curved-edges': true,
  vertices: true,
  faces: true,
  edges: true,
  corners: true,
  'base-width': true,
  'height-to-width': true,
  'volume-per-paper': true,
  'area-to-perimeter': true,
} satisfies Record<MeasureId, true>) as MeasureId[];

const HOLDS = Object.keys({
  taped: true,
  glued: true,
  leaning: true,
  nested: true,
} satisfies Record<Hold, true>) as Hold[];

/** There is room for 64. */
export const measureId: Part<MeasureId> = oneOf(MEASURES, 6, 'height');

/** There is room for eight. */
export const hold: Part<Hold> = oneOf(HOLDS, 3, 'taped');

/** Of a measure, or of whatever else a person decides on. */
export const decided: Part<string> = {
  write: (value, out) => {
    const known = MEASURES.find((id) => id === value);
    out.put(known === undefined ? 0 : 1, 1);
    if (known === undefined) word('decided').write(value, out);
    else measureId.write(known, out);
  },
  read: (from) => (from.take(1) === 1 ? measureId.read(from) : word('decided').read(from)),
};
