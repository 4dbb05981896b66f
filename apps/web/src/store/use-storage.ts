// The way of the parts to the storage.

import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { ClassStorage } from './storage.ts';

export const StorageContext = createContext<ClassStorage | null>(null);

export function useStorage(): ClassStorage {
  const storage = useContext(StorageContext);
  if (storage === null) throw new RangeError('no storage above this part');
  return storage;
}
