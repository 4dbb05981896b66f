// How a class reads a challenge: its ruler, and the names it gave to things.

import type { Challenge, Group } from '@cairnmark/engine';
import { STOOD_ID, TILT_ID } from '@cairnmark/engine';
import type { Unit } from '@cairnmark/geometry';
import { MEASURES, rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import type { Reader } from '@cairnmark/words';

export function readerOf({ ruler, kit, criteria }: Challenge, groups: readonly Group[]): Reader {
  return {
    ruler: rulerOf(ruler),
    bands: TILT_BANDS,
    unitOf,
    kindName: naming(kit.kinds),
    criterionName: naming(criteria),
    groupName: naming(groups),
  };
}

/** What is no measure of a build (criteria, kinds of piece, what was earned, points) is a count. */
const unitOf = (measure: string): Unit => UNITS.get(measure) ?? 'count';

const UNITS: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...MEASURES.map(({ id, unit }): [string, Unit] => [id, unit]),
  [STOOD_ID, 's'],
  [TILT_ID, 'rad'],
]);

function naming(named: readonly { readonly id: string; readonly name: string }[]): (id: string) => string {
  const names = new Map(named.map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? id;
}
