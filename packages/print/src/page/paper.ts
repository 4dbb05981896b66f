// Sheets of paper, mm. A4 after ISO 216, Letter after ASME Y14.1: 8.5 in by 11 in.

import { MM_PER_INCH } from '@cairnmark/geometry';

export type PaperSize = 'a4' | 'letter';

export interface Paper {
  readonly size: PaperSize;
  readonly orientation: 'portrait' | 'landscape';
}

export interface Extent {
  readonly widthMm: number;
  readonly heightMm: number;
}

export const PAPER_SIZES: readonly PaperSize[] = ['a4', 'letter'];

/** Width and height of the sheet as it is read. */
export function extentOf({ size, orientation }: Paper): Extent {
  const { widthMm, heightMm } = UPRIGHT[size];
  return orientation === 'portrait' ? { widthMm, heightMm } : { widthMm: heightMm, heightMm: widthMm };
}

const UPRIGHT: Readonly<Record<PaperSize, Extent>> = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 8.5 * MM_PER_INCH, heightMm: 11 * MM_PER_INCH },
};
