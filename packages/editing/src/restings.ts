// The ways in which a piece can be put down, as its solid names them.

import type { Result, Solid } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { Bench, EditIssue } from './types.ts';

/** Ids of the sides on which a solid can lie, the usual one first. */
export const restingsOf = ({ restings }: Pick<Solid, 'restings'>): readonly string[] => restings.map(({ id }) => id);

/** The side named `resting` of a kind, null for the usual one; or that there is no such kind or side. */
export function restingOf(
  kind: string,
  resting: string | null,
  { solids }: Pick<Bench, 'solids'>,
): Result<string, EditIssue> {
  const solid = solids.get(kind);
  if (solid === undefined) return failure([{ code: 'kind-unknown', path: ['kind'], details: { kind } }]);
  const known = restingsOf(solid);
  const found = resting === null ? known[0] : known.find((id) => id === resting);
  if (found !== undefined) return success(found);
  const details = { kind, resting: resting ?? '', known: known.join(', ') };
  return failure([{ code: 'no-such-face', path: ['resting'], details }]);
}

/** The side after `resting`, the first again after the last. */
export function restingAfter(kind: string, resting: string, bench: Bench): string {
  const solid = bench.solids.get(kind);
  const known = solid === undefined ? [] : restingsOf(solid);
  return known[(known.indexOf(resting) + 1) % known.length] ?? resting;
}
