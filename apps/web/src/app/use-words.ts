// The words of the device's language: those of the screens, and those about builds once a class is open.

import type { ScreenWords, Words } from '@cairnmark/words';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

export interface Spoken {
  readonly screens: ScreenWords;
  /** null: not here, because no class has been open yet. */
  readonly builds: Words | null;
  /** Asks again for what did not come; null: nothing is missing. */
  readonly again: (() => void) | null;
}

export const SpokenContext = createContext<Spoken | null>(null);

export function useSpoken(): Spoken {
  const spoken = useContext(SpokenContext);
  if (spoken === null) throw new RangeError('no words above this part');
  return spoken;
}

export const useScreenWords = (): ScreenWords => useSpoken().screens;

/** Only below a place that waits for them. */
export function useWords(): Words {
  const { builds } = useSpoken();
  if (builds === null) throw new RangeError('the words about builds are not loaded');
  return builds;
}
