// What values of the right shape say together that cannot be: the engine's checks of names and numbers, and beside them
// what it would only find while measuring: sizes that make no solid, and pieces of a kind that the kit does not have.

import type { Attempt, Challenge, ClassRecord, EngineIssue, Group, Kit } from '@cairnmark/engine';
import { challengeIssues, classIssues } from '@cairnmark/engine';
import type { Issue, SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';

type Path = Issue['path'];

export function kitMeaning(kit: Kit): EngineIssue[] {
  const ids = kit.kinds.map(({ id }) => id);
  const twice = ids.flatMap((id, k): EngineIssue[] =>
    ids.indexOf(id) === k ? [] : [{ code: 'id-twice', path: ['kinds', k, 'id'], details: { id } }],
  );
  return [...twice, ...kitSizeIssues(kit, [])];
}

export function challengeMeaning(challenge: Challenge): EngineIssue[] {
  return [...challengeIssues(challenge, []), ...kitSizeIssues(challenge.kit, ['kit'])];
}

export function classMeaning(record: ClassRecord): EngineIssue[] {
  const { groups, challenges, attempts } = record;
  return [
    ...classIssues(record),
    ...challenges.flatMap(({ kit }, k) => kitSizeIssues(kit, ['challenges', k, 'kit'])),
    ...groups.flatMap((group, k) => measuredSizeIssues(group, challenges, ['groups', k, 'measured'])),
    ...attempts.flatMap((attempt, k) => pieceIssues(attempt, challenges, ['attempts', k, 'layout', 'pieces'])),
  ];
}

function kitSizeIssues({ kinds }: Kit, path: Path): EngineIssue[] {
  return kinds.flatMap(({ solid }, k) => sizeIssues(solid, [...path, 'kinds', k, 'solid', 'sizes']));
}

/** A group's own sizes must make the solid of that kind in the first kit that has it. */
function measuredSizeIssues({ measured }: Group, challenges: readonly Challenge[], path: Path): EngineIssue[] {
  const kinds = challenges.flatMap(({ kit }) => kit.kinds);
  return Object.entries(measured).flatMap(([id, sizes]) => {
    const kind = kinds.find((candidate) => candidate.id === id);
    return kind === undefined ? [] : sizeIssues({ solid: kind.solid.solid, sizes }, [...path, id]);
  });
}

function sizeIssues(spec: SolidSpec, path: Path): EngineIssue[] {
  const made = makeSolid(spec);
  // The paths of makeSolid begin with "sizes", which stands in `path` in its own way.
  return made.ok ? [] : made.issues.map((issue) => ({ ...issue, path: [...path, ...issue.path.slice(1)] }));
}

function pieceIssues({ challenge, layout }: Attempt, challenges: readonly Challenge[], path: Path): EngineIssue[] {
  const kit = challenges.find(({ id }) => id === challenge)?.kit;
  if (kit === undefined) return [];
  const kinds = new Set(kit.kinds.map(({ id }) => id));
  const listed = layout.kind === 'laid-out' ? layout.pieces.map(({ kind }) => kind) : layout.pieces;
  const within = layout.kind === 'laid-out' ? ['kind'] : [];
  return listed.flatMap((kind, k): EngineIssue[] =>
    kinds.has(kind) ? [] : [{ code: 'kind-unknown', path: [...path, k, ...within], details: { kind } }],
  );
}
