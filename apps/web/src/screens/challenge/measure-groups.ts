// All that a challenge can ask about, in groups for a list to choose from.

import type { Challenge } from '@cairnmark/engine';
import { factIds } from '@cairnmark/engine';

export const MEASURE_GROUPS = ['build', 'counted', 'ratios', 'standing', 'kinds', 'judged', 'earned'] as const;
export type MeasureGroup = (typeof MEASURE_GROUPS)[number];

/** The groups that have something in them, and every fact of the challenge in one of them. */
export function measureGroups(challenge: Challenge): readonly (readonly [MeasureGroup, readonly string[]])[] {
  const all = [...factIds(challenge)];
  return MEASURE_GROUPS.map((group): readonly [MeasureGroup, readonly string[]] => [
    group,
    all.filter((measure) => groupOf(measure) === group),
  ]).filter(([, measures]) => measures.length > 0);
}

function groupOf(measure: string): MeasureGroup {
  if (measure.startsWith('kind:')) return 'kinds';
  if (measure.startsWith('judged:')) return 'judged';
  if (measure.startsWith('earned:')) return 'earned';
  return OTHERS[measure] ?? 'build';
}

/** Whatever is not listed is measured of the build. */
const OTHERS: Readonly<Record<string, MeasureGroup>> = {
  pieces: 'counted',
  kinds: 'counted',
  'full-sets': 'counted',
  'flat-faces': 'counted',
  'curved-surfaces': 'counted',
  'straight-edges': 'counted',
  'curved-edges': 'counted',
  vertices: 'counted',
  faces: 'counted',
  edges: 'counted',
  corners: 'counted',
  'height-to-width': 'ratios',
  'volume-per-paper': 'ratios',
  'area-to-perimeter': 'ratios',
  'stood-seconds': 'standing',
  'stands-to': 'standing',
};
