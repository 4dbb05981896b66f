// Looks up every laid piece in the kit and refuses what no stack can be built from, telling every fault at once.

import type { Result } from '../kernel/result.ts';
import { failure, success } from '../kernel/result.ts';
import type { Resting, Solid } from '../solids/types.ts';
import { bodyBox } from './body-box.ts';
import type { LaidPiece, SolidsByKind, StackIssue, Weighed } from './types.ts';

/** Most pieces in one build; a class set has a few hundred. Keeps the worst layout to seconds. */
export const MOST_PIECES = 5000;

/** Furthest from the origin that a piece may lie along x or y, mm: a hall's floor, and far within exact arithmetic. */
export const FURTHEST_MM = 10_000;

/** A laid piece with its solid and its resting face. */
export interface KnownPiece {
  readonly laid: LaidPiece;
  readonly solid: Solid;
  readonly resting: Resting;
}

/** Every piece with what it is; or every fault, each with the path of its field and, for a name, what was expected. */
export function checkLayout(
  pieces: readonly LaidPiece[],
  solids: SolidsByKind,
): Result<readonly KnownPiece[], StackIssue> {
  const issues: StackIssue[] = [];
  const known: KnownPiece[] = [];
  if (pieces.length > MOST_PIECES) {
    issues.push({
      code: 'too-many-pieces',
      path: ['pieces'],
      details: { count: pieces.length, limit: MOST_PIECES },
    });
  }
  pieces.forEach((laid, index) => {
    for (const field of ['xMm', 'yMm', 'turnRad'] as const) {
      const issue = numberIssue(index, field, laid[field]);
      if (issue !== null) issues.push(issue);
    }
    const solid = solids.get(laid.kind);
    if (solid === undefined) {
      issues.push({ code: 'kind-unknown', path: ['pieces', index, 'kind'], details: { kind: laid.kind } });
      return;
    }
    const resting = solid.restings.find(({ id }) => id === laid.resting);
    if (resting === undefined) {
      const names = solid.restings.map(({ id }) => id).join(', ');
      const details = { kind: laid.kind, resting: laid.resting, known: names };
      issues.push({ code: 'resting-unknown', path: ['pieces', index, 'resting'], details });
      return;
    }
    issues.push(...weighedIssues(index, laid.weighed, solid));
    known.push({ laid, solid, resting });
  });
  return issues.length > 0 ? failure(issues) : success(known);
}

function numberIssue(index: number, field: 'xMm' | 'yMm' | 'turnRad', value: number): StackIssue | null {
  const path = ['pieces', index, field];
  if (!Number.isFinite(value)) return { code: 'position-not-finite', path, details: { value: String(value) } };
  if (field !== 'turnRad' && Math.abs(value) > FURTHEST_MM) {
    return { code: 'position-too-far', path, details: { valueMm: value, limitMm: FURTHEST_MM } };
  }
  return null;
}

function weighedIssues(index: number, weighed: Weighed | undefined, solid: Solid): readonly StackIssue[] {
  if (weighed === undefined) return [];
  const { massG, centreMm } = weighed;
  const path = ['pieces', index, 'weighed'];
  const { min, max } = bodyBox(solid.body);
  const light = !(massG > 0 && massG < Number.POSITIVE_INFINITY);
  const outside = centreMm !== undefined && !(centreMm >= min[2] && centreMm <= max[2]);
  return [
    ...(light ? [{ code: 'mass-not-positive' as const, path: [...path, 'massG'], details: { massG } }] : []),
    ...(outside
      ? [
          {
            code: 'centre-outside-piece' as const,
            path: [...path, 'centreMm'],
            details: { centreMm, leastMm: min[2], mostMm: max[2] },
          },
        ]
      : []),
  ];
}
