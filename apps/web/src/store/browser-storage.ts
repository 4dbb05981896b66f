// Classes in the browser's own database. A class is kept as its class file without attempts, and one entry an attempt, so
// that a tap on a build writes one small entry.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import type { DBSchema, IDBPDatabase } from 'idb';
import { openDB } from 'idb';
import type { Changes, ClassStorage, Kept, KeptClass } from './storage.ts';

interface Shelf extends DBSchema {
  classes: { key: string; value: KeptClass & { readonly file: object } };
  attempts: { key: [classId: string, id: string]; value: KeptAttempt; indexes: { 'by-class': string } };
}

interface KeptAttempt {
  readonly classId: string;
  readonly id: string;
  readonly attempt: Attempt;
}

const DATABASE = 'cairnmark';
const VERSION = 1;

export function browserStorage(): ClassStorage {
  const database = openShelf();
  // Told where it is used; a browser that keeps nothing still runs the app.
  database.catch(() => undefined);
  return {
    list: async () => {
      const kept = await database.then((shelf) => shelf.getAll('classes')).catch(() => []);
      return kept
        .map(({ id, name, groups, savedAt }) => ({ id, name, groups, savedAt }))
        .sort((a, b) => Date.parse(b.savedAt) - Date.parse(a.savedAt));
    },
    open: async (id) => {
      const shelf = await database.catch(() => null);
      const kept = await shelf?.get('classes', id);
      if (shelf === null || kept === undefined) return null;
      const attempts = await shelf.getAllFromIndex('attempts', 'by-class', id);
      const text = JSON.stringify({ ...kept.file, attempts: attempts.map(({ attempt }) => attempt).sort(inTime) });
      const { readClass } = await import('./class-file.ts');
      return readClass(text);
    },
    keep: (id, changes, at) => outcomeOf(database.then((shelf) => write(shelf, id, changes, at))),
    remove: (id) => outcomeOf(database.then((shelf) => erase(shelf, id))),
  };
}

/** Rejects also where a browser has no database at all, or forbids it by throwing at once. */
async function openShelf(): Promise<IDBPDatabase<Shelf>> {
  return openDB<Shelf>(DATABASE, VERSION, {
    upgrade(fresh) {
      fresh.createObjectStore('classes', { keyPath: 'id' });
      fresh.createObjectStore('attempts', { keyPath: ['classId', 'id'] }).createIndex('by-class', 'classId');
    },
  });
}

/** By time, then id: the order of attempts decides nothing, but stays the same from visit to visit. */
const inTime = (a: Attempt, b: Attempt): number =>
  Date.parse(a.at) - Date.parse(b.at) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

async function write(
  shelf: IDBPDatabase<Shelf>,
  id: string,
  { frame, attempts, removed }: Changes,
  savedAt: string,
): Promise<void> {
  // Written out before the transaction begins: a transaction ends at the first wait for anything else.
  const framed = frame === null ? null : await fileOf(frame);
  const writing = shelf.transaction(['classes', 'attempts'], 'readwrite');
  const [classes, entries] = [writing.objectStore('classes'), writing.objectStore('attempts')];
  const before = await classes.get(id);
  const file = framed ?? before?.file;
  const name = frame?.name ?? before?.name;
  const groups = frame?.groups.length ?? before?.groups;
  if (file !== undefined && name !== undefined && groups !== undefined) {
    await classes.put({ id, name, groups, savedAt, file });
  }
  await Promise.all([
    ...attempts.map((attempt) => entries.put({ classId: id, id: attempt.id, attempt })),
    ...removed.map((gone) => entries.delete([id, gone])),
  ]);
  await writing.done;
}

async function fileOf(frame: ClassRecord): Promise<object> {
  const { writeClass } = await import('./class-file.ts');
  return JSON.parse(writeClass(frame)) as object;
}

async function erase(shelf: IDBPDatabase<Shelf>, id: string): Promise<void> {
  const writing = shelf.transaction(['classes', 'attempts'], 'readwrite');
  const entries = writing.objectStore('attempts');
  const keys = await entries.index('by-class').getAllKeys(id);
  await Promise.all([writing.objectStore('classes').delete(id), ...keys.map((key) => entries.delete(key))]);
  await writing.done;
}

async function outcomeOf(work: Promise<void>): Promise<Kept> {
  try {
    await work;
    return 'kept';
  } catch (error) {
    return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'failed';
  }
}
