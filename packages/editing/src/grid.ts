// Positions lie on hundredths of a millimetre and turns on whole degrees, so that what was dragged in the scene can be
// typed again to the last digit. mm, rad.

import type { Hold, LaidPiece, Weighed } from '@cairnmark/geometry';

/** The nearest hundredth of a millimetre; halves away from zero, so that there and back is no move at all. */
export const onGrid = (mm: number): number =>
  (Math.sign(mm) * Math.round(Math.abs(mm) * STEPS_PER_MM)) / STEPS_PER_MM + 0;

/** The first hundredth of a millimetre at or beyond `mm`, upwards (1) or downwards (-1); less than a millionth counts as none. */
export const gridBeyond = (mm: number, sign: 1 | -1): number =>
  onGrid((sign * Math.ceil(sign * mm * STEPS_PER_MM - NOISE_STEPS)) / STEPS_PER_MM);

/** The sum of two lengths, each taken to the grid first. */
export const sumOnGrid = (mm: number, moreMm: number): number => onGrid(onGrid(mm) + onGrid(moreMm));

/** The turn of a whole number of degrees, from 0 up to 360. No other function makes a turn. */
export const turnOf = (degrees: number): number => (wholeTurn(degrees) * Math.PI) / 180;

/** The whole degrees of a turn, from 0 up to 360. */
export const degreesOf = (turnRad: number): number => wholeTurn(degreesIn(turnRad));

/** A turn with degrees added, to the whole degree. */
export const turnBy = (turnRad: number, degrees: number): number => turnOf(degreesIn(turnRad) + degrees);

/** The piece with some fields changed, undefined taking one away; the same object when nothing changes. */
export function relaid(piece: LaidPiece, changes: Changes): LaidPiece {
  const { kind, resting, xMm, yMm, turnRad, on, held, weighed } = { ...piece, ...changes };
  const same = Object.entries(changes).every(([key, value]) => Object.is(piece[key as keyof LaidPiece], value));
  if (same) return piece;
  return {
    kind,
    resting,
    xMm,
    yMm,
    turnRad,
    ...(on !== undefined && { on }),
    ...(held !== undefined && { held }),
    ...(weighed !== undefined && { weighed }),
  };
}

interface Changes extends Partial<Pick<LaidPiece, 'resting' | 'xMm' | 'yMm' | 'turnRad'>> {
  readonly on?: LaidPiece['on'] | undefined;
  readonly held?: Hold | undefined;
  readonly weighed?: Weighed | undefined;
}

const wholeTurn = (degrees: number): number => ((Math.round(degrees) % 360) + 360) % 360;

const degreesIn = (turnRad: number): number => (turnRad * 180) / Math.PI;

const STEPS_PER_MM = 100;

/** A millionth of a millimetre: what finding the place of touching may be off. */
const NOISE_STEPS = 1e-6 * STEPS_PER_MM;
