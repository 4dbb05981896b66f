// What a sheet needs of a class before it says anything.

import type { SheetData } from './data.ts';
import type { SheetNeed } from './sheet-kind.ts';

/** Whether the class has it. */
export function isMet(need: SheetNeed, { challenge, cards }: Pick<SheetData, 'challenge' | 'cards'>): boolean {
  switch (need) {
    case 'supply-game':
      return challenge.supply !== null;
    case 'table-cards':
      return cards.length > 0;
    case 'marks':
      return challenge.criteria.length > 0 || challenge.requirements.some(({ kind }) => kind === 'judged');
  }
}
