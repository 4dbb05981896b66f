// Loads the words of the device's language and hands them down; what is shown keeps its language until all of the next is here.

import type { Language } from '@cairnmark/words';
import { loadScreenWords, loadWords } from '@cairnmark/words';
import type { ComponentChildren } from 'preact';
import { useCallback, useLayoutEffect } from 'preact/hooks';
import { useSession } from '../store/use-session.ts';
import { useArrival } from './use-arrival.ts';
import type { Spoken } from './use-words.ts';
import { SpokenContext } from './use-words.ts';

export function Speaking({ children }: { readonly children: ComponentChildren }) {
  const language = useSession((session) => session.language);
  const classOpen = useSession((session) => session.record !== null);
  const { what, lost, again } = useArrival(useCallback(() => load(language, classOpen), [language, classOpen]));
  useLayoutEffect(() => {
    if (what !== null) document.documentElement.lang = what.screens.language;
  }, [what]);
  if (what === null) return null;
  return <SpokenContext value={{ ...what, again: lost ? again : null }}>{children}</SpokenContext>;
}

async function load(language: Language, classOpen: boolean): Promise<Pick<Spoken, 'screens' | 'builds'>> {
  const [screens, builds] = await Promise.all([loadScreenWords(language), classOpen ? loadWords(language) : null]);
  return { screens, builds };
}
