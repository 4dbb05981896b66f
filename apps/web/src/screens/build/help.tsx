// One sentence that says what a part of the screen is for, while somebody asks.

import type { ScreenKey } from '@cairnmark/words';
import { useScreenWords } from '../../app/use-words.ts';

export type HelpKey = Extract<ScreenKey, `help.${string}`>;

export function Help({ text }: { readonly text: HelpKey }) {
  return <p className="help note">{useScreenWords().say(text)}</p>;
}
