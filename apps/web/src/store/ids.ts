// Ids of what somebody names: letters and digits of the name, told apart by a number where two names are alike.

import { ID_CHARACTERS_MOST } from '@cairnmark/formats';

/** An id of the class file that stands for none in `taken`. `stem` stands where a name has no letter or digit. */
export function idFor(name: string, taken: Iterable<string>, stem: string): string {
  const known = new Set(taken);
  const plain = slug(name);
  // Every object answers to that name already.
  const base = plain === '' || plain === 'constructor' ? stem : plain;
  if (!known.has(base)) return base;
  let number = 2;
  while (known.has(`${base}-${number}`)) number += 1;
  return `${base}-${number}`;
}

/** Room for a number behind it, and for the ids that are made of two. */
const CHARACTERS_MOST = Math.floor(ID_CHARACTERS_MOST / 3);

const slug = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, CHARACTERS_MOST)
    .replace(/^-+|-+$/g, '');
