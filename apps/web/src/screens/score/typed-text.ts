// Names and reasons as records take them: without control characters, trimmed, not longer than a file may hold.

import { NAME_CHARACTERS_MOST, TEXT_CHARACTERS_MOST } from '@cairnmark/formats';

/** Empty when nothing is left. */
export const asName = (typed: string): string => plain(typed).slice(0, NAME_CHARACTERS_MOST).trim();

export const asReason = (typed: string): string => plain(typed).slice(0, TEXT_CHARACTERS_MOST).trim();

const plain = (typed: string): string => typed.replace(/\p{Cc}+/gu, ' ').trim();
