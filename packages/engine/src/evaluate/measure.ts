// The build of an attempt as geometry measures it: the kinds of the kit, in the sizes that the group read off its own
// pieces. Kinds and sizes have been checked, so that all that geometry can still refuse is the layout.

import type { BuildMeasures, Result } from '@cairnmark/geometry';
import { failure, measureBuild, rulerOf } from '@cairnmark/geometry';
import type { Path } from '../check/checks.ts';
import type { EngineIssue } from '../check/issues.ts';
import type { Attempt, Challenge, Group } from '../types.ts';
import { gapAllowanceOf } from './gap-allowance.ts';
import { kindsOf } from './kinds.ts';

/** What geometry measured, or what it found wrong with the layout. The attempt stands at `path`. */
export function measure(
  { layout }: Attempt,
  challenge: Challenge,
  group: Group,
  path: Path,
): Result<BuildMeasures, EngineIssue> {
  const { counting, base } = challenge;
  const gapAllowanceMm = gapAllowanceOf(challenge, layout);
  const rulerStepMm = rulerOf(challenge.ruler).stepMm;
  const measured = measureBuild(layout, kindsOf(challenge, group), { counting, base, gapAllowanceMm, rulerStepMm });
  if (measured.ok) return measured;
  return failure(measured.issues.map((issue) => ({ ...issue, path: [...path, 'layout', ...issue.path] })));
}
