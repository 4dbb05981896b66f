// Do the pieces make sense: every kind of the kit, and every size that a group read off its own, makes a solid. Lengths mm.

import type { PairFriction, SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import { FRICTION_MOST } from '../limits.ts';
import { TABLE } from '../stability/question.ts';
import type { Group, Kit } from '../types.ts';
import type { Path } from './checks.ts';
import { idsTwice, outOfRange } from './checks.ts';
import type { EngineIssue } from './issues.ts';

/** Everything that is wrong with the kit, which stands at `path`. */
export function kitIssues({ kinds, frictions }: Kit, path: Path): EngineIssue[] {
  return [
    ...idsTwice(kinds, [...path, 'kinds']),
    ...kinds.flatMap(({ solid }, k) => sizeIssues(solid, [...path, 'kinds', k, 'solid', 'sizes'])),
    ...kinds.flatMap(({ crushed = 0, stock }, k) => outOfRange(crushed, [...path, 'kinds', k, 'crushed'], 0, stock)),
    ...frictionIssues(frictions, new Set([...kinds.map(({ surface }) => surface), TABLE]), [...path, 'frictions']),
  ];
}

/** A pair of surfaces that no kind has would go unnoticed; of a pair that stands twice only the first would count. */
function frictionIssues(frictions: readonly PairFriction[], surfaces: ReadonlySet<string>, path: Path): EngineIssue[] {
  const pairs = frictions.map(({ between }) => [...between].sort().join('\n'));
  return frictions.flatMap(({ between, friction }, k): EngineIssue[] => [
    ...between.flatMap((surface, end): EngineIssue[] =>
      surfaces.has(surface)
        ? []
        : [{ code: 'surface-unknown', path: [...path, k, 'between', end], details: { surface } }],
    ),
    ...(pairs.indexOf(pairs[k] ?? '') === k
      ? []
      : [
          {
            code: 'friction-twice' as const,
            path: [...path, k, 'between'],
            details: { first: between[0], second: between[1] },
          },
        ]),
    ...outOfRange(friction, [...path, k, 'friction'], 0, FRICTION_MOST),
  ]);
}

/** A group's own sizes must make the solid of that kind in every kit that has it. The group stands at `path`. */
export function ownSizeIssues({ measured }: Group, kits: readonly Kit[], path: Path): EngineIssue[] {
  return Object.entries(measured).flatMap(([id, sizes]) => {
    const solids = new Set(kits.flatMap(({ kinds }) => kinds.filter((kind) => kind.id === id)).map(solidOf));
    return [...solids].flatMap((solid) => sizeIssues({ solid, sizes }, [...path, 'measured', id]));
  });
}

const solidOf = ({ solid }: Kit['kinds'][number]) => solid.solid;

/** The paths of makeSolid begin with "sizes", which stands in `path` in its own way. */
function sizeIssues(spec: SolidSpec, path: Path): EngineIssue[] {
  const made = makeSolid(spec);
  return made.ok ? [] : made.issues.map((issue) => ({ ...issue, path: [...path, ...issue.path.slice(1)] }));
}
