// "What is this?" on the Score card and the Board, whose sentences come with the words of the cards.

import type { CardKey } from '@cairnmark/words';
import { HelpTexts } from '../parts/asked-help.tsx';
import { useCardWords } from './card-words.tsx';

type HelpKey = Extract<CardKey, `help.${string}`>;
/** The sentence, and the controls that it is of by the words that stand on them. */
export type CardHelpItem = readonly [HelpKey, ...string[]];

export function CardHelp({ items }: { readonly items: readonly CardHelpItem[] }) {
  const { say } = useCardWords();
  return <HelpTexts items={items.map(([sentence, ...controls]) => [say(sentence), ...controls] as const)} />;
}
