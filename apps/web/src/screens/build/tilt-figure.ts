// The last of the six numbers: the tilt that decides, by its name.

import type { Stability } from '@cairnmark/geometry';
import type { BuildWords } from '../../app/use-build-words.ts';

export interface TiltFigure {
  readonly name: 'read.tips' | 'read.slides';
  /** null: not known. */
  readonly tiltRad: number | null;
  /** It does not stand at all. */
  readonly none: boolean;
}

export function tiltFigure(stability: Stability | null): TiltFigure {
  if (stability === null) return { name: 'read.tips', tiltRad: null, none: false };
  const { tipsAt, slidesAt, standsTo, stands } = stability;
  const slides = slidesAt !== null && (tipsAt === null || slidesAt.tiltRad < tipsAt.tiltRad);
  return {
    name: slides ? 'read.slides' : 'read.tips',
    tiltRad: standsTo?.tiltRad ?? null,
    none: stands === false,
  };
}

/** In the same figures as the sentence beside it: 45 is not cut to 44.9 by what the sums leave. */
export const tiltText = ({ tiltRad }: TiltFigure, { inClass }: Pick<BuildWords, 'inClass'>): string =>
  tiltRad === null ? '–' : inClass.amount('stands-to', tiltRad, 0);
