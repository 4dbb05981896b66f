// How many copies of a sheet a class needs.

import type { SheetData } from './data.ts';
import type { CopyFor } from './sheet-kind.ts';

/** One for the class, for each group, for each two pupils, or for each pupil; at least one. */
export function copiesOf(copyFor: CopyFor, { record, pupils }: Pick<SheetData, 'record' | 'pupils'>): number {
  switch (copyFor) {
    case 'class':
      return 1;
    case 'group':
      return Math.max(1, record.groups.length);
    case 'pair':
      return Math.max(1, Math.ceil(pupils / 2));
    case 'pupil':
      return Math.max(1, pupils);
  }
}
