// How a class reads a challenge at the terminal: with the challenge's own ruler.

import type { Challenge, Group } from '@cairnmark/engine';
import { unitOf } from '@cairnmark/engine';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import type { Reader } from '@cairnmark/words';
import { classReader } from '@cairnmark/words';

export function readerOf(challenge: Challenge, groups: readonly Group[]): Reader {
  return classReader(challenge, groups, { ruler: rulerOf(challenge.ruler), bands: TILT_BANDS, unitOf });
}
