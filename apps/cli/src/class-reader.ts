// How a class reads a challenge: its ruler, and the names it gave to things.

import type { Challenge, Group } from '@cairnmark/engine';
import { unitOf } from '@cairnmark/engine';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
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

function naming(named: readonly { readonly id: string; readonly name: string }[]): (id: string) => string {
  const names = new Map(named.map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? id;
}
