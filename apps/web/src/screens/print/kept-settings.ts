// The settings of the Print screen, kept on this device for each class: whoever looks at the kit and comes back finds them.

import { keepValues, keptValues } from '../../store/kept-values.ts';
import type { PartId, PrintSettings } from './settings.ts';
import { PUPILS_MOST, SETS_MOST } from './settings.ts';

const KEY = 'cairnmark.print';

/** What is kept of them; all that another version of the app wrote, and this one does not know, is as at `first`. */
export function recallSettings(classId: string, first: PrintSettings): PrintSettings {
  const kept = keptValues(KEY)[classId];
  if (typeof kept !== 'object' || kept === null) return first;
  const { chosen, ...others } = kept as Readonly<Record<string, unknown>>;
  const known = Object.entries(others).filter(([name, value]) => isKnown(name, value));
  // A name of no part chooses nothing.
  const ids = Array.isArray(chosen) ? { chosen: new Set(chosen as PartId[]) } : {};
  return { ...first, ...Object.fromEntries(known), ...ids };
}

export function rememberSettings(classId: string, settings: PrintSettings): void {
  keepValues(KEY, { ...keptValues(KEY), [classId]: { ...settings, chosen: [...settings.chosen] } });
}

type Known = Omit<PrintSettings, 'chosen'>;

const CHOICES: { readonly [K in keyof Known]: readonly Known[K][] | readonly [least: number, most: number] } = {
  paper: ['a4', 'letter'],
  print: ['usual', 'large'],
  pupils: [1, PUPILS_MOST],
  copies: ['needed', 'one'],
  pieces: ['sets', 'stock'],
  sets: [1, SETS_MOST],
  arrange: ['sets', 'mixed', 'masters'],
  tabDepthMm: [1, 20],
  large: ['tell', 'split'],
};

function isKnown(name: string, value: unknown): boolean {
  if (!Object.hasOwn(CHOICES, name)) return false;
  const choices: readonly unknown[] = CHOICES[name as keyof Known];
  const [least, most] = choices;
  if (typeof least !== 'number' || typeof most !== 'number') return choices.includes(value);
  return typeof value === 'number' && Number.isInteger(value) && value >= least && value <= most;
}
