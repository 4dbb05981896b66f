// How a class reads a challenge: its ruler, and the names it gave to things.

import type { Challenge, Group } from '@cairnmark/engine';
import type { Reader } from './reader.ts';

/** What the records do not say of themselves: the ruler numbers are shown with, the bands of verdicts, units by measure. */
export type Reading = Pick<Reader, 'ruler' | 'bands' | 'unitOf'>;

export function classReader({ kit, criteria }: Challenge, groups: readonly Group[], reading: Reading): Reader {
  return {
    ...reading,
    kindName: naming(kit.kinds),
    criterionName: naming(criteria),
    groupName: naming(groups),
  };
}

function naming(named: readonly { readonly id: string; readonly name: string }[]): (id: string) => string {
  const names = new Map(named.map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? id;
}
