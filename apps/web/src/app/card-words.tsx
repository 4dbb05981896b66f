// The words of the Score card and the Board, which come with them in the language of the device.

import type { CardWords } from '@cairnmark/words';
import { loadCardWords } from '@cairnmark/words';
import type { ComponentType } from 'preact';
import { createContext } from 'preact';
import { useCallback, useContext } from 'preact/hooks';
import { Lost } from './lost.tsx';
import { useArrival } from './use-arrival.ts';
import { useScreenWords } from './use-words.ts';

const CardWordsContext = createContext<CardWords | null>(null);

/** A screen with these words. */
export function withCardWords(Screen: ComponentType): ComponentType {
  return function Worded() {
    const { language, say } = useScreenWords();
    const { what, lost, again } = useArrival(useCallback(() => loadCardWords(language), [language]));
    if (what !== null) {
      return (
        <CardWordsContext value={what}>
          <Screen />
        </CardWordsContext>
      );
    }
    return lost ? <Lost again={again} /> : <p className="page">{say('frame.loading')}</p>;
  };
}

export function useCardWords(): CardWords {
  const words = useContext(CardWordsContext);
  if (words === null) throw new RangeError('no words of the cards above this part');
  return words;
}
