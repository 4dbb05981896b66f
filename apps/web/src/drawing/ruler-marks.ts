// The ruler that stands beside a build: its length, its divisions and its numerals, in centimetres or inches.

import type { Vec2 } from '@cairnmark/geometry';
import { MM_PER_CM, MM_PER_INCH } from '@cairnmark/geometry';
import { linePath } from './paths.ts';

export type RulerUnit = 'cm' | 'in';

export interface Numeral {
  readonly atMm: number;
  readonly text: string;
}

export interface RulerMarks {
  /** Height above its foot and length of each division line. */
  readonly ticks: readonly { readonly atMm: number; readonly lengthPx: number }[];
  readonly numerals: readonly Numeral[];
}

export const RULER_WIDTH_PX = 38;

/** Where numerals end, from the left of the ruler. */
export const NUMERAL_X_PX = 35;

/** Long enough for a build of that height, and for the first pieces of the next. */
export function rulerLengthMm(heightMm: number, unit: RulerUnit): number {
  const { unitMm } = SCALES[unit];
  return Math.ceil(Math.max(SHORTEST_MM, heightMm + SPARE_MM) / unitMm) * unitMm;
}

const SHORTEST_MM = 210;
const SPARE_MM = 22;

/** `pxPerMm` along the ruler: lines and numerals that would stand too close are left out. */
export function rulerMarks(unit: RulerUnit, lengthMm: number, pxPerMm: number): RulerMarks {
  const { unitMm, divisions, numeralEvery } = SCALES[unit];
  const shown = divisions.filter(({ everyMm }) => everyMm * pxPerMm >= CLOSEST_TICKS_PX);
  const [finest] = shown;
  const numeralUnits =
    (thinning.find((n) => n * numeralEvery * unitMm * pxPerMm >= CLOSEST_NUMERALS_PX) ?? 100) * numeralEvery;
  return {
    ticks:
      finest === undefined
        ? []
        : places(finest.everyMm, lengthMm).map((atMm) => ({ atMm, lengthPx: longest(shown, atMm) })),
    numerals: places(numeralUnits * unitMm, lengthMm - NUMERAL_ROOM_PX / pxPerMm)
      .slice(1)
      .map((atMm) => ({ atMm, text: String(Math.round(atMm / unitMm)) })),
  };
}

/** The division lines as one path; `foot` is the lower left corner of the ruler on the page, px. */
export function ticksPath(marks: RulerMarks, [x, y]: Vec2, pxPerMm: number): string {
  return marks.ticks
    .map(({ atMm, lengthPx }) => {
      const at = y - atMm * pxPerMm;
      return linePath(
        [
          [x, at],
          [x + lengthPx, at],
        ],
        1,
      );
    })
    .join('');
}

const CLOSEST_TICKS_PX = 3.5;
const CLOSEST_NUMERALS_PX = 17;
const NUMERAL_ROOM_PX = 5;

/** How many times sparser numerals may get. */
const thinning = [1, 2, 4, 10, 20] as const;

interface Division {
  readonly everyMm: number;
  readonly lengthPx: number;
}

interface Scale {
  readonly unitMm: number;
  /** Finest first; each is a whole number of the one before. */
  readonly divisions: readonly Division[];
  /** Units between two numerals. */
  readonly numeralEvery: number;
}

const SCALES: Readonly<Record<RulerUnit, Scale>> = {
  cm: {
    unitMm: MM_PER_CM,
    divisions: [
      { everyMm: MM_PER_CM / 2, lengthPx: 6 },
      { everyMm: MM_PER_CM, lengthPx: 10 },
      { everyMm: MM_PER_CM * 5, lengthPx: 16 },
    ],
    numeralEvery: 5,
  },
  in: {
    unitMm: MM_PER_INCH,
    divisions: [
      { everyMm: MM_PER_INCH / 4, lengthPx: 6 },
      { everyMm: MM_PER_INCH / 2, lengthPx: 10 },
      { everyMm: MM_PER_INCH, lengthPx: 16 },
    ],
    numeralEvery: 1,
  },
};

/** 0, one step, two steps ... up to the length; counted, so that no rounding adds up. */
const places = (stepMm: number, lengthMm: number): readonly number[] =>
  Array.from({ length: Math.floor(lengthMm / stepMm + WHOLE_SLACK) + 1 }, (_, k) => k * stepMm);

/** No unit. What rounding leaves of a whole number of steps. */
const WHOLE_SLACK = 1e-9;

const longest = (divisions: readonly Division[], atMm: number): number =>
  divisions.reduce(
    (length, { everyMm, lengthPx }) => (isWhole(atMm / everyMm) ? Math.max(length, lengthPx) : length),
    0,
  );

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= WHOLE_SLACK;
