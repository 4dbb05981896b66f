// A file becomes a picture, the sheet is found in it, and the camera that took it is worked out.

import type { FitOptions, GroundSheet, Photo, PlainSheet } from '@cairnmark/photo';
import { findAllMarkers, fitCamera, measurePrintScale, readPlainSheet } from '@cairnmark/photo';
import type { ReadAsk, ReadPhoto, RefusedFile } from '../workers/photo-questions.ts';
import type { Progress } from '../workers/worker-client.ts';
import { decoded } from './decoded.ts';
import { fileFault } from './file-fault.ts';
import { focal35Of } from './focal.ts';
import { pictureFault } from './picture-fault.ts';

/** Told after each of these: the file read, the picture opened, the sheet found. */
const STEPS = 3;

export async function readPhoto({ file, sheet }: ReadAsk, progress: Progress): Promise<ReadPhoto | RefusedFile> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const refused = fileFault(bytes);
  if (refused !== null) return { photo: null, ...refused };
  const options = { focal35Mm: await focal35Of(bytes) };
  progress(1, STEPS);
  const photo = await decoded(file, bytes);
  if (photo === null) return { photo: null, fault: 'not-readable', details: {} };
  progress(2, STEPS);
  const read = sheet.kind === 'ground' ? onGround(photo, sheet, options) : onPlain(photo, sheet, options);
  progress(3, STEPS);
  return { photo, ...read, fault: read.camera.ok ? null : pictureFault(photo) };
}

type Seen = Pick<ReadPhoto, 'markers' | 'camera' | 'halfTurned' | 'warning'>;

function onGround(photo: Photo, sheet: GroundSheet, options: FitOptions): Seen {
  const found = findAllMarkers(photo, sheet, options);
  const camera = fitCamera(found, sheet, options);
  const scale = camera.ok ? measurePrintScale(photo, camera.value, sheet) : null;
  return { markers: found.markers, camera, halfTurned: null, warning: scale?.ok ? scale.value.warning : null };
}

const onPlain = (photo: Photo, sheet: PlainSheet, options: FitOptions): Seen => ({
  markers: [],
  ...readPlainSheet(photo, sheet, options),
});
