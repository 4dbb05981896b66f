// Texts of the talk after the build: graphs, what the points favour, the best that could be. They come when somebody asks.

import type { talk } from './en/talk/index.ts';
import type { TextsOf, TextWords } from './text-words.ts';

export type EnglishTalk = typeof talk;
export type TalkKey = keyof EnglishTalk;
export type TalkTexts = TextsOf<EnglishTalk>;
export type TalkWords = TextWords<EnglishTalk>;
