// Where classes are kept between visits. One interface: today the browser keeps them, a class server can take its place.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import type { FileIssue } from '@cairnmark/formats';
import type { Result } from '@cairnmark/geometry';

/** A kept class as the first screen lists it. */
export interface KeptClass {
  readonly id: string;
  readonly name: string;
  readonly groups: number;
  /** ISO 8601. */
  readonly savedAt: string;
}

/** `full`: there is no room; `failed`: nothing can be kept here, or another reason. What was kept before stays. */
export type Kept = 'kept' | 'full' | 'failed';

/** What is new since the class was last kept. */
export interface Changes {
  /** The class without its attempts; null: unchanged. */
  readonly frame: ClassRecord | null;
  readonly attempts: readonly Attempt[];
  readonly removed: readonly string[];
}

export interface ClassStorage {
  /** Newest first; empty when nothing can be kept here. */
  list(): Promise<readonly KeptClass[]>;
  /** null: no class of that id. A kept class is read as carefully as a file. */
  open(id: string): Promise<Result<ClassRecord, FileIssue> | null>;
  keep(id: string, changes: Changes, at: string): Promise<Kept>;
  remove(id: string): Promise<Kept>;
}

/** What differs between two states of a class; records are never changed in place, so equal parts are the same object. */
export function changesBetween(before: ClassRecord | null, after: ClassRecord): Changes {
  const known = new Set(before?.attempts ?? []);
  const ids = new Set(after.attempts.map(({ id }) => id));
  return {
    frame: sameFrame(before, after) ? null : { ...after, attempts: [] },
    attempts: after.attempts.filter((attempt) => !known.has(attempt)),
    removed: (before?.attempts ?? []).map(({ id }) => id).filter((id) => !ids.has(id)),
  };
}

function sameFrame(before: ClassRecord | null, after: ClassRecord): boolean {
  if (before === null) return false;
  const keys = Object.keys(after) as (keyof ClassRecord)[];
  return keys.every((key) => key === 'attempts' || before[key] === after[key]);
}
