// How high one piece is, finer than a tower is read: the pieces of a list are added up, and each was measured by itself.

import { MM_PER_INCH } from '@cairnmark/geometry';
import type { BuildWords } from '../app/use-build-words.ts';

/** "4.8 cm" beside a size of 4.8 cm, also where the class reads its towers to half centimetres. */
export function pieceHeight(heightMm: number, { inClass, ruler }: Pick<BuildWords, 'inClass' | 'ruler'>): string {
  return inClass.roundedAmount('height', heightMm, ruler.unit === 'in' ? SIXTEENTH_MM : TENTH_CM_MM);
}

/** The finest divisions of the rulers that a school has. */
const SIXTEENTH_MM = MM_PER_INCH / 16;
const TENTH_CM_MM = 1;
