// What this device remembers for itself: language, units, who holds it, and where the class was left. Small, and never part of a class.

import type { Language } from '@cairnmark/words';
import { LANGUAGES } from '@cairnmark/words';

const UNITS = ['cm', 'in'] as const;
export type Units = (typeof UNITS)[number];

export const ROLES = ['pupil', 'measurer', 'judge', 'teacher'] as const;
/** Who holds the device. */
export type Role = (typeof ROLES)[number];

/** Where somebody was at work. */
export interface Place {
  readonly classId: string;
  readonly group: string;
  readonly challenge: string;
  /** null: the group has not begun there. */
  readonly attempt: string | null;
}

export interface DeviceMemory {
  readonly language: Language | null;
  readonly units: Units | null;
  readonly place: Place | null;
  readonly role: Role;
}

const KEY = 'cairnmark.device';
const NOTHING: DeviceMemory = { language: null, units: null, place: null, role: 'teacher' };

/** What another version of the app wrote and this one does not know counts as nothing: there are no words for its language. */
export function recall(): DeviceMemory {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Record<keyof DeviceMemory, unknown>>;
    return {
      language: LANGUAGES.find((language) => language === kept.language) ?? null,
      units: UNITS.find((units) => units === kept.units) ?? null,
      place: isPlace(kept.place) ? kept.place : null,
      // One device in the class is the teacher's own.
      role: ROLES.find((role) => role === kept.role) ?? 'teacher',
    };
  } catch {
    return NOTHING;
  }
}

export function remember(memory: DeviceMemory): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(memory));
  } catch {
    // A device that keeps nothing asks again next time.
  }
}

function isPlace(kept: unknown): kept is Place {
  const { classId, group, challenge, attempt } = (kept ?? {}) as Partial<Record<keyof Place, unknown>>;
  return [classId, group, challenge].every(isText) && (attempt === null || isText(attempt));
}

const isText = (value: unknown): boolean => typeof value === 'string';

/** The first language of the browser that there are words for. */
export function languageOf(preferred: readonly string[]): Language {
  const codes = preferred.map((tag) => tag.slice(0, 2).toLowerCase());
  return codes.flatMap((code) => LANGUAGES.filter((language) => language === code))[0] ?? 'en';
}
