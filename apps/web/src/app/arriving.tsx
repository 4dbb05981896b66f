// What comes over the network when it is needed, with what stands in its place until it has come, or when it does not.

import type { ComponentChildren } from 'preact';
import { Lost } from './lost.tsx';
import { useArrival } from './use-arrival.ts';
import { useScreenWords } from './use-words.ts';

/** `ask` must be the same function until something else is asked for. */
export function Arriving<T>({
  ask,
  children,
}: {
  readonly ask: () => Promise<T>;
  readonly children: (what: T) => ComponentChildren;
}) {
  const { say } = useScreenWords();
  const { what, lost, again } = useArrival(ask);
  if (what !== null) return <>{children(what)}</>;
  return lost ? <Lost again={again} /> : <p className="page">{say('frame.loading')}</p>;
}
