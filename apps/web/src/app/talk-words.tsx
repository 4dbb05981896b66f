// The words of the talk after the build, which come with the graphs and with Fair points in the language of the device.

import type { TalkWords } from '@cairnmark/words';
import { loadTalkWords } from '@cairnmark/words';
import type { ComponentChildren } from 'preact';
import { createContext } from 'preact';
import { useCallback, useContext } from 'preact/hooks';
import { Arriving } from './arriving.tsx';
import { useScreenWords } from './use-words.ts';

const TalkContext = createContext<TalkWords | null>(null);

/** Hands them down to what stands within. */
export function TalkSpeaking({ children }: { readonly children: ComponentChildren }) {
  const { language } = useScreenWords();
  const ask = useCallback(() => loadTalkWords(language), [language]);
  return <Arriving ask={ask}>{(words) => <TalkContext value={words}>{children}</TalkContext>}</Arriving>;
}

export function useTalkWords(): TalkWords {
  const words = useContext(TalkContext);
  if (words === null) throw new RangeError('no words of the talk above this part');
  return words;
}
