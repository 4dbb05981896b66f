// What a field makes of a typed number: taken, asked back, or refused with the reason.

import type { TypedNumber, WrittenUnit } from './length-text.ts';
import { readNumber } from './length-text.ts';

/** In the unit of the engine. */
export interface Limits {
  readonly least: number;
  readonly most: number;
  /** Things that are counted come whole. */
  readonly whole?: boolean;
}

export type Fault = 'empty' | 'unreadable' | 'not-whole' | 'too-small' | 'too-large';

export type Entry =
  | { readonly kind: 'taken'; readonly value: number }
  | { readonly kind: 'either'; readonly decimal: number; readonly thousands: number }
  | { readonly kind: 'refused'; readonly fault: Fault };

export function entryOf(text: string, units: readonly WrittenUnit[], limits: Limits): Entry {
  const typed = readNumber(text, units);
  switch (typed.kind) {
    case 'read':
      return within(typed.value, limits);
    case 'either':
      return limits.whole === true ? wholeOf(typed, limits) : typed;
    case 'empty':
    case 'unreadable':
      return refused(typed.kind);
  }
}

/** The meaning that was picked of two. */
export function within(value: number, { least, most, whole = false }: Limits): Entry {
  if (whole && !Number.isInteger(value)) return refused('not-whole');
  if (value < least) return refused('too-small');
  return value > most ? refused('too-large') : { kind: 'taken', value };
}

/** "1,250" pieces can only be one thing, "1,255" too; nothing is asked where only one meaning is whole. */
const wholeOf = (typed: Extract<TypedNumber, { kind: 'either' }>, limits: Limits): Entry =>
  Number.isInteger(typed.decimal) ? typed : within(typed.thousands, limits);

const refused = (fault: Fault): Entry => ({ kind: 'refused', fault });
