// English.

import type { Catalogue } from '../catalogue.ts';
import { cautions } from './cautions.ts';
import { issues } from './issues.ts';
import { names } from './names.ts';
import { own } from './own.ts';
import { results } from './results.ts';
import { stability } from './stability.ts';
import { supply } from './supply.ts';
import { why } from './why.ts';

export const english: Catalogue = {
  decimalMark: '.',
  and: ' and ',
  per: ' per ',
  ordinal: (place) => `${place}${ending(place)}`,
  names,
  issues,
  results,
  own,
  supply,
  why,
  stability,
  cautions,
};

/** 1st, 2nd, 3rd, 4th, but 11th, 12th, 13th. */
function ending(place: number): string {
  if (place % 100 >= 11 && place % 100 <= 13) return 'th';
  return ['th', 'st', 'nd', 'rd'][place % 10] ?? 'th';
}
