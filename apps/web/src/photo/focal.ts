// The focal length that a photo's file states. Nothing else that stands there is read: not the place, not the time.

/// <reference path="./exifr-mini.d.ts" />
import { parse } from 'exifr/dist/mini.esm.mjs';

/** Focal length as on 35 mm film, mm (EXIF 2.32, FocalLengthIn35mmFilm); 0 there means "not known". */
const FOCAL_35 = 0xa405;

/** Names, and tags for all parts together, the small build does not know: it throws. */
const LOOKED_AT = {
  exif: { pick: [FOCAL_35] },
  gps: false,
  ifd1: false,
  interop: false,
  translateKeys: false,
} as const;

/** null: the file does not say, as after most ways of sending a photo. */
export async function focal35Of(bytes: Uint8Array): Promise<number | null> {
  const tags = await parse(bytes, LOOKED_AT).catch(() => undefined);
  const focal = tags?.[FOCAL_35];
  return typeof focal === 'number' && focal > 0 ? focal : null;
}
