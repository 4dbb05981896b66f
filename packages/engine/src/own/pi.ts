// The pi of a class: schools count with 3, 3.14, 22/7 or the key of the calculator.

import type { ClassPi } from '../types.ts';

/** The number that a class takes for pi. */
export const piOf = (pi: ClassPi): number => PIS[pi];

/** What a group that does not count with the pi of its class may have counted with. */
export const otherPis = (pi: ClassPi): readonly number[] => Object.values(PIS).filter((value) => value !== PIS[pi]);

const PIS: Readonly<Record<ClassPi, number>> = { '3': 3, '3.14': 3.14, '22/7': 22 / 7, key: Math.PI };
