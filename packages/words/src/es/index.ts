// Spanish.

import type { Catalogue } from '../catalogue.ts';
import { cautions } from './cautions.ts';
import { issues } from './issues.ts';
import { names } from './names.ts';
import { own } from './own.ts';
import { results } from './results.ts';
import { stability } from './stability.ts';
import { supply } from './supply.ts';
import { why } from './why.ts';

export const spanish: Catalogue = {
  decimalMark: ',',
  and: ' y ',
  per: ' por ',
  ordinal: (place) => `${place}.º`,
  names,
  issues,
  results,
  own,
  supply,
  why,
  stability,
  cautions,
};
