// A PIN of four figures a class, on this device. It keeps honest children honest: it is no lock, and stands here in plain.

import { keepValues, keptValues } from './kept-values.ts';

const KEY = 'cairnmark.pins';

export const PIN_FIGURES = 4;

export const isPin = (text: string): boolean => new RegExp(`^\\d{${PIN_FIGURES}}$`).test(text);

/** null: this class has none here. */
export function pinOf(classId: string): string | null {
  const pin = keptValues(KEY)[classId];
  return typeof pin === 'string' && isPin(pin) ? pin : null;
}

/** null: none any more. False: this device keeps nothing, so there is no PIN. */
export function setPin(classId: string, pin: string | null): boolean {
  const { [classId]: _before, ...others } = keptValues(KEY);
  return keepValues(KEY, pin === null ? others : { ...others, [classId]: pin });
}
