// Lines for people. Texts may hold signs from files and calls that would steer a terminal; a mark stands for them.

import { FAULTY } from './exit.ts';
import type { Io } from './io.ts';

export const tell = (io: Io, text: string): void => io.out(`${printable(text)}\n`);
export const complain = (io: Io, text: string): void => io.err(`${printable(text)}\n`);

/** Tells every fault and gives the exit code for it. */
export function refuse(io: Io, faults: readonly string[]): typeof FAULTY {
  for (const fault of faults) complain(io, fault);
  return FAULTY;
}

/** Control characters but for the end of a line, and marks that turn the direction of writing. */
const STEERING = /[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069]/gu;

const printable = (text: string): string => text.replace(STEERING, '\ufffd');
