// The build of an attempt as geometry measures it: the kinds of the kit, in the sizes that the group read off its own
// pieces. Faults that geometry finds are told at the place in our own records where they stand.

import type { BuildMeasures, PieceKinds, Result } from '@cairnmark/geometry';
import { failure, measureBuild, rulerOf } from '@cairnmark/geometry';
import type { Path } from '../check/checks.ts';
import type { EngineIssue } from '../check/issues.ts';
import type { Attempt, Challenge, Group } from '../types.ts';

/** Where the three records stand, for the paths of issues. */
export interface Places {
  readonly attempt: Path;
  readonly challenge: Path;
  readonly group: Path;
}

export function measure(
  { layout }: Attempt,
  challenge: Challenge,
  group: Group,
  places: Places,
): Result<BuildMeasures, EngineIssue> {
  const { counting, base, gapAllowanceMm } = challenge;
  const rulerStepMm = rulerOf(challenge.ruler).stepMm;
  const measured = measureBuild(layout, kindsOf(challenge, group), { counting, base, gapAllowanceMm, rulerStepMm });
  if (measured.ok) return measured;
  return failure(measured.issues.map((issue) => ({ ...issue, path: placeOf(issue.path, challenge, group, places) })));
}

/** A group's own sizes of a kind take the place of the kit's, all of them. */
function kindsOf({ kit }: Challenge, group: Group): PieceKinds {
  return new Map(
    kit.kinds.map(({ id, solid }) => [id, { solid: solid.solid, sizes: ownSizes(group, id) ?? solid.sizes }]),
  );
}

const ownSizes = ({ measured }: Group, kind: string) => (Object.hasOwn(measured, kind) ? measured[kind] : undefined);

/** Geometry's paths are ["kinds", kind, "sizes", ...] for a solid, and begin inside the layout for all else. */
function placeOf(path: Path, challenge: Challenge, group: Group, places: Places): Path {
  const [first, kind, , ...size] = path;
  if (first !== 'kinds' || typeof kind !== 'string') return [...places.attempt, 'layout', ...path];
  if (ownSizes(group, kind) !== undefined) return [...places.group, 'measured', kind, ...size];
  const k = challenge.kit.kinds.findIndex(({ id }) => id === kind);
  return [...places.challenge, 'kit', 'kinds', k, 'solid', 'sizes', ...size];
}
