// A stack from which one piece was taken, all others where they were. What rested on it keeps its place, with one support
// less or none.

import type { Stack } from '../stack/types.ts';

/** Indices of the pieces after it are one less than before. */
export function stackWithout({ pieces, supports, faceContacts }: Stack, piece: number): Stack {
  const now = (index: number): number => (index < piece ? index : index - 1);
  const nowOrTable = (index: number | 'table'): number | 'table' => (index === 'table' ? index : now(index));
  return {
    pieces: pieces.filter(({ index }) => index !== piece).map((one) => ({ ...one, index: now(one.index) })),
    supports: supports
      .filter(({ upper, lower }) => upper !== piece && lower !== piece)
      .map((support) => ({ ...support, upper: now(support.upper), lower: nowOrTable(support.lower) })),
    faceContacts: faceContacts
      .filter(({ first, second }) => first !== piece && second !== piece)
      .map((contact) => ({ ...contact, first: now(contact.first), second: nowOrTable(contact.second) })),
  };
}
