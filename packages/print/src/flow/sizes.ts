// How large the writing on a sheet is, mm of font size. A point is 0.353 mm.

export interface TextSizes {
  readonly title: number;
  readonly heading: number;
  /** What young pupils read, and what is read from afar. */
  readonly large: number;
  readonly body: number;
  readonly small: number;
  /** Nothing is made smaller than this to make it fit. */
  readonly least: number;
}

export type TextSize = Exclude<keyof TextSizes, 'least'>;

/** Usual print, or large print for those who need it: 18 points in the body (common practice, no source). */
export type Print = 'usual' | 'large';

export const SIZES: Readonly<Record<Print, TextSizes>> = {
  usual: { title: 7, heading: 4.8, large: 6, body: 3.9, small: 3.2, least: 2.5 },
  large: { title: 10, heading: 7.4, large: 8, body: 6.4, small: 5.2, least: 4.2 },
};
