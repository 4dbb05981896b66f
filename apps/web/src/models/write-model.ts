// Pieces as the bytes of a file that other programs read. It brings three.js along, so it is loaded when somebody asks.

import { GLTFExporter } from 'three/addons/exporters/GLTFExporter.js';
import { STLExporter } from 'three/addons/exporters/STLExporter.js';
import { fileName } from '../parts/file-name.ts';
import type { ModelPiece } from './model.ts';
import { modelOf } from './model.ts';

export type ModelFormat = 'stl' | 'glb';

/** `name`: of all pieces together, as it stands in the file. */
export function writeModel(format: ModelFormat, name: string, pieces: readonly ModelPiece[]): Promise<ArrayBuffer> {
  return WRITERS[format](name, pieces);
}

const WRITERS = { stl: writeStl, glb: writeGlb } as const;

/**
 * Binary STL. It has no unit; programs for 3D printers take its numbers for millimetres, with z up (common practice, no
 * source). The 80 bytes at its head are free, but do not begin with "solid", which stands for the form in words (common
 * practice, no source): here they tell the unit and the name.
 */
async function writeStl(name: string, pieces: readonly ModelPiece[]): Promise<ArrayBuffer> {
  const { buffer } = new STLExporter().parse(modelOf(name, pieces, 'mm-z-up'), { binary: true });
  const head = `Cairnmark, mm, ${fileName(name)}`.slice(0, STL_HEAD_BYTES);
  new TextEncoder().encodeInto(head, new Uint8Array(buffer, 0, STL_HEAD_BYTES));
  return buffer;
}

const STL_HEAD_BYTES = 80;

/**
 * Binary glTF 2.0: metres, y up, and the front faces +z (the glTF 2.0 specification of the Khronos Group, section 3.4,
 * Coordinate System and Units).
 */
async function writeGlb(name: string, pieces: readonly ModelPiece[]): Promise<ArrayBuffer> {
  const written = await new GLTFExporter().parseAsync(modelOf(name, pieces, 'm-y-up'), { binary: true });
  if (!(written instanceof ArrayBuffer)) throw new RangeError('binary glTF came out as text');
  return written;
}
