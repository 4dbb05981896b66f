// The words of the Score card and the Board, which come with them in the language of the device.

import type { CardWords } from '@cairnmark/words';
import { loadCardWords } from '@cairnmark/words';
import type { ComponentType } from 'preact';
import { createContext } from 'preact';
import { useCallback, useContext } from 'preact/hooks';
import { Arriving } from './arriving.tsx';
import { useScreenWords } from './use-words.ts';

const CardWordsContext = createContext<CardWords | null>(null);

/** A screen with these words. */
export function withCardWords(Screen: ComponentType): ComponentType {
  return function Worded() {
    const { language } = useScreenWords();
    const ask = useCallback(() => loadCardWords(language), [language]);
    return (
      <Arriving ask={ask}>
        {(words) => (
          <CardWordsContext value={words}>
            <Screen />
          </CardWordsContext>
        )}
      </Arriving>
    );
  };
}

export function useCardWords(): CardWords {
  const words = useContext(CardWordsContext);
  if (words === null) throw new RangeError('no words of the cards above this part');
  return words;
}
