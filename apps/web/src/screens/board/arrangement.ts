// Which rows stand where: in the order of the places, or in that of the class while places are hidden; page by page.

import { pagesOf } from './pages.ts';
import type { Placed } from './reveal.ts';

export interface Row extends Placed {
  readonly group: string;
}

/** `rows` in the order of the places; `order`: ids of the groups as the class lists them; `most`: rows a page. */
export function arranged<T extends Row>(
  rows: readonly T[],
  order: readonly string[],
  placesHidden: boolean,
  most: number,
): readonly (readonly T[])[] {
  if (!placesHidden) return pagesOf(rows, most);
  const position = new Map(order.map((group, k) => [group, k]));
  const at = ({ group }: T): number => position.get(group) ?? order.length;
  return pagesOf(
    [...rows].sort((a, b) => at(a) - at(b)),
    most,
  );
}

/** How many groups of the list have the place of this one. */
export const sharers = (row: Row, rows: readonly Row[]): number =>
  row.place === null ? 1 : rows.filter(({ place }) => place === row.place).length;
