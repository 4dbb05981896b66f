// The three ways of counting faces, edges and corners, with their short names.

import type { CountingConvention } from '@cairnmark/geometry';

export const WAYS = {
  'flat-only': 'challenge.way-flat-only',
  'flat-and-curved-apart': 'challenge.way-flat-and-curved-apart',
  'all-surfaces': 'challenge.way-all-surfaces',
} as const satisfies Readonly<Record<CountingConvention, string>>;

export const COUNTINGS: readonly CountingConvention[] = ['flat-only', 'flat-and-curved-apart', 'all-surfaces'];
