// Spanish.

import type { Catalogue } from '../catalogue.ts';
import { cautions } from './cautions.ts';
import { commands } from './commands.ts';
import { issues } from './issues.ts';
import { names } from './names.ts';
import { results } from './results.ts';
import { stability } from './stability.ts';

export const spanish: Catalogue = {
  decimalMark: ',',
  and: ' y ',
  ordinal: (place) => `${place}.º`,
  names,
  issues,
  results,
  stability,
  commands,
  cautions,
};
