// Fingerprints: three short numbers that tell whether another device reads a try as this one does. An attempt names its
// challenge and its kinds of piece by id alone, and says nothing of their rules and sizes.

import type { Challenge, Group } from '@cairnmark/engine';
import { crc32 } from './crc32.ts';

export interface Prints {
  /** Of what is measured and scored and how, without its name and what only decides what is shown. */
  readonly rules: number;
  /** Of the sizes, material, friction and number of the pieces, without their names and how many are crushed just now. */
  readonly kit: number;
  /** Of the sizes that the group measured itself. */
  readonly sizes: number;
}

/** Two that differ have the same print once in 16 million times. */
export const PRINT_BITS = 24;

export function printsOf(challenge: Challenge, group: Group | undefined): Prints {
  const { id, name, labels, hidden, bestShown, gradePreset, kit, ...rules } = challenge;
  const kinds = kit.kinds.map(({ name, crushed, ...kind }) => kind);
  return {
    rules: printOf(rules),
    kit: printOf({ kinds, frictions: kit.frictions }),
    sizes: printOf(group?.measured ?? {}),
  };
}

/** The same whatever the order of the keys. */
function printOf(value: unknown): number {
  const text = JSON.stringify(inOrder(value));
  const bytes = Uint8Array.from(
    { length: 2 * text.length },
    (_, k) => text.charCodeAt(k >> 1) >> (k % 2 === 0 ? 8 : 0),
  );
  return crc32(bytes) % 2 ** PRINT_BITS;
}

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, inOrder(inner)]));
}
