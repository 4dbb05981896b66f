// A typed name or sentence as a record takes it.

import { NAME_CHARACTERS_MOST, TEXT_CHARACTERS_MOST } from '@cairnmark/formats';

/** On one line, without control characters. Empty: nothing is left. */
export const plainText = (typed: string): string => typed.replace(/[\p{Cc}\s]+/gu, ' ').trim();

/** The same, not longer than the name of something may be. */
export const asName = (typed: string): string => plainText(typed).slice(0, NAME_CHARACTERS_MOST).trim();

/** The same, not longer than a sentence may be. */
export const asReason = (typed: string): string => plainText(typed).slice(0, TEXT_CHARACTERS_MOST).trim();
