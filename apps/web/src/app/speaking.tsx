// Loads the words of the device's language and hands them down; what is shown keeps its language until all of the next is here.

import type { Language } from '@cairnmark/words';
import { loadScreenWords, loadWords } from '@cairnmark/words';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useSession } from '../store/use-session.ts';
import type { Spoken } from './use-words.ts';
import { SpokenContext } from './use-words.ts';

export function Speaking({ children }: { readonly children: ComponentChildren }) {
  const language = useSession((session) => session.language);
  const classOpen = useSession((session) => session.record !== null);
  const [spoken, setSpoken] = useState<Spoken | null>(null);
  useEffect(() => {
    let current = true;
    load(language, classOpen).then((words) => {
      if (!current) return;
      document.documentElement.lang = language;
      setSpoken(words);
    }, keepTheOld);
    return () => {
      current = false;
    };
  }, [language, classOpen]);
  return spoken === null ? null : <SpokenContext value={spoken}>{children}</SpokenContext>;
}

async function load(language: Language, classOpen: boolean): Promise<Spoken> {
  const [screens, builds] = await Promise.all([loadScreenWords(language), classOpen ? loadWords(language) : null]);
  return { screens, builds };
}

/** Without a network a language that was never read here cannot come. */
function keepTheOld(): void {}
