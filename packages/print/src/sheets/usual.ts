// What is usual where nobody has said otherwise.

import type { GradePreset } from '@cairnmark/engine';
import { DEEP_TAB_DEPTH_MM, USUAL_TAB_DEPTH_MM } from '@cairnmark/nets';

/** Pupils in a group; common practice, no source. */
const GROUP_OF = 4;

/** In a class of so many groups. */
export const usualPupils = (groups: number): number => Math.max(1, groups) * GROUP_OF;

/** Young hands need more to hold on to. */
export const usualTabDepthMm = (grade: GradePreset): number =>
  grade === 'grades-2-3' ? DEEP_TAB_DEPTH_MM : USUAL_TAB_DEPTH_MM;
