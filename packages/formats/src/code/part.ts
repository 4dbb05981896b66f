// How the parts of a record go into bits and come back. Keys are not written: the order in which a part lists them stands
// for them, so nothing may be put between two of them without a new version of the code.

import type { BitsIn, BitsOut } from './bits.ts';

export interface Part<T> {
  readonly write: (value: T, out: BitsOut) => void;
  /** Of bits that no writer of ours wrote, some value, and a fault told to `from`. */
  readonly read: (from: BitsIn) => T;
}

/** The parts of a record in their order; of a key that may be left out, an `optional` one. */
export type PartsOf<T> = {
  readonly [K in keyof T]-?: Record<never, never> extends Pick<T, K> ? Part<T[K] | undefined> : Part<T[K]>;
};

export function record<T extends object>(parts: PartsOf<T>): Part<T> {
  const list = Object.entries<unknown>(parts) as [keyof T, Part<unknown>][];
  return {
    write: (value, out) => {
      for (const [key, part] of list) part.write(value[key], out);
    },
    read: (from) => {
      const entries = list.map(([key, part]) => [key, part.read(from)] as const);
      return Object.fromEntries(entries.filter(([, value]) => value !== undefined)) as T;
    },
  };
}

/** A bit says whether it is there. */
export const optional = <T>(part: Part<T>): Part<T | undefined> => ({
  write: (value, out) => {
    out.put(value === undefined ? 0 : 1, 1);
    if (value !== undefined) part.write(value, out);
  },
  read: (from) => (from.take(1) === 1 ? part.read(from) : undefined),
});

export const nullable = <T>(part: Part<T>): Part<T | null> => ({
  write: (value, out) => optional(part).write(value ?? undefined, out),
  read: (from) => optional(part).read(from) ?? null,
});

export const flag: Part<boolean> = {
  write: (value, out) => out.put(value ? 1 : 0, 1),
  read: (from) => from.take(1) === 1,
};

/** A whole number from 0 on: three bits at a time, the lowest first, each with a bit that says whether more follow. */
export const count: Part<number> = {
  write: (value, out) => {
    let rest = value;
    while (rest >= DIGIT) {
      out.put(DIGIT + (rest % DIGIT), DIGIT_BITS + 1);
      rest = Math.floor(rest / DIGIT);
    }
    out.put(rest, DIGIT_BITS + 1);
  },
  read: (from) => {
    let [value, scale] = [0, 1];
    for (;;) {
      const digit = from.take(DIGIT_BITS + 1);
      value += (digit % DIGIT) * scale;
      if (digit < DIGIT) return value;
      scale *= DIGIT;
    }
  },
};

const DIGIT_BITS = 3;
const DIGIT = 2 ** DIGIT_BITS;

export const list = <T>(item: Part<T>): Part<readonly T[]> => ({
  write: (values, out) => {
    count.write(values.length, out);
    for (const value of values) item.write(value, out);
  },
  read: (from) => {
    const length = count.read(from);
    // No item takes less than a bit.
    if (length > from.left()) {
      from.fault();
      return [];
    }
    return Array.from({ length }, () => item.read(from));
  },
});

/** One of these names by its place among them; `bits` leave room for more, which come at the end. */
export const oneOf = <Name extends string>(names: readonly Name[], bits: number, first: Name): Part<Name> => ({
  write: (value, out) => out.put(names.indexOf(value), bits),
  read: (from) => {
    const name = names[from.take(bits)];
    if (name === undefined) from.fault();
    return name ?? first;
  },
});

/** A value whose `kind` says what else it has. */
export function kindOf<T extends { readonly kind: string }>(parts: KindParts<T>, bits: number): Part<T> {
  const list = Object.entries<unknown>(parts) as [string, Part<object>][];
  return {
    write: (value, out) => {
      const at = list.findIndex(([kind]) => kind === value.kind);
      out.put(at, bits);
      list[at]?.[1].write(value, out);
    },
    read: (from) => {
      const found = list[from.take(bits)];
      if (found === undefined) from.fault();
      const [kind, part] = found ?? list[0] ?? ['', record({})];
      return { kind, ...part.read(from) } as T;
    },
  };
}

type KindParts<T extends { readonly kind: string }> = {
  readonly [K in T['kind']]: Part<Omit<Extract<T, { readonly kind: K }>, 'kind'>>;
};
