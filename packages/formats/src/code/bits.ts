// Bits one after another, the highest of a number first, and what was met on the way: words and numbers come again, and
// the second time a short sign stands for them.

/** What has gone through so far; the writer and the reader have the same at the same place. */
interface Met {
  /** Words in the order in which they were met, by vocabulary. */
  readonly words: Map<string, string[]>;
  /** The last number, by column. */
  readonly numbers: Map<string, number>;
}

export interface BitsOut extends Met {
  /** Puts `count` bits of a whole number; up to 53. */
  put(value: number, count: number): void;
  /** All bytes that are needed, also those past the limit, which are counted and not kept. */
  byteCount(): number;
  /** Filled up with zeros to whole bytes. */
  bytes(): Uint8Array;
}

export interface BitsIn extends Met {
  /** The next `count` bits as a whole number; zeros, and a fault, past the end. */
  take(count: number): number;
  /** Bits that are left. */
  left(): number;
  /** Told by whoever reads what no writer of ours writes. */
  fault(): void;
  isFaulty(): boolean;
}

export function bitsOut(bytesMost: number): BitsOut {
  const kept: number[] = [];
  let count = 0;
  return {
    ...nothingMet(),
    put: (value, bits) => {
      count += bits;
      if (count > bytesMost * BYTE) return;
      for (let k = bits - 1; k >= 0; k -= 1) kept.push(Math.floor(value / 2 ** k) % 2);
    },
    byteCount: () => Math.ceil(count / BYTE),
    bytes: () => {
      const bytes = new Uint8Array(Math.ceil(kept.length / BYTE));
      kept.forEach((bit, k) => {
        const at = Math.floor(k / BYTE);
        bytes[at] = (bytes[at] ?? 0) | (bit << (BYTE - 1 - (k % BYTE)));
      });
      return bytes;
    },
  };
}

export function bitsIn(bytes: Uint8Array): BitsIn {
  const end = bytes.length * BYTE;
  let at = 0;
  let faulty = false;
  const next = (): number => {
    if (at >= end) faulty = true;
    const bit = ((bytes[Math.floor(at / BYTE)] ?? 0) >> (BYTE - 1 - (at % BYTE))) & 1;
    at += 1;
    return bit;
  };
  return {
    ...nothingMet(),
    take: (count) => {
      let value = 0;
      for (let k = 0; k < count; k += 1) value = value * 2 + next();
      return value;
    },
    left: () => Math.max(0, end - at),
    fault: () => {
      faulty = true;
    },
    isFaulty: () => faulty,
  };
}

const BYTE = 8;

const nothingMet = (): Met => ({ words: new Map(), numbers: new Map() });
