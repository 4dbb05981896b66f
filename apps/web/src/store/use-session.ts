// The way of the parts to the session: one store a page, handed down from the root.

import { createContext } from 'preact';
import { useSyncExternalStore } from 'preact/compat';
import { useContext } from 'preact/hooks';
import type { Session, SessionStore } from './session.ts';
import type { At } from './where-at.ts';
import { whereAt } from './where-at.ts';

export const SessionContext = createContext<SessionStore | null>(null);

export function useSession<T>(select: (session: Session) => T): T {
  const store = useSessionStore();
  return useSyncExternalStore(store.subscribe, () => select(store.getState()));
}

/** The store itself, for what is asked at the time of a tap. */
export function useSessionStore(): SessionStore {
  const store = useContext(SessionContext);
  if (store === null) throw new RangeError('no session above this part');
  return store;
}

/** Where the class is at work; null while no class is open. */
export function useAt(): At | null {
  const record = useSession((session) => session.record);
  const place = useSession((session) => session.place);
  return whereAt(record, place);
}
