// The class of Skerry Light: six crews, three challenges, one day. All of it is invented.

import type { Records } from '@cairnmark/formats';
import { decode } from '@cairnmark/formats';
import spanish from './skerry-light.es.json' with { type: 'json' };
import file from './skerry-light.json' with { type: 'json' };

/** The languages that the names, rules and reasons of the demo are written in. */
export type DemoLanguage = 'en' | 'es';

/** The demo class as the text of a class file, in English. */
export const demoText = `${JSON.stringify(file, null, 2)}\n`;

/** The demo class as a record. Its ids and numbers are the same in every language. */
export function demoClass(language: DemoLanguage = 'en'): Records['class'] {
  const decoded = decode(language === 'en' ? demoText : inSpanish(demoText), 'class');
  if (!decoded.ok) throw new RangeError(`the demo class is refused: ${JSON.stringify(decoded.issues)}`);
  return decoded.value.value;
}

/** What people of the demo wrote; everything else in the file is for the program. */
const WRITTEN = new Set(['name', 'text', 'reason', 'by', 'confirmedBy', 'judge']);
const SPANISH: Readonly<Record<string, string>> = spanish;

const inSpanish = (text: string): string =>
  JSON.stringify(
    JSON.parse(text, (key, value: unknown) =>
      typeof value === 'string' && WRITTEN.has(key) ? (SPANISH[value] ?? value) : value,
    ),
  );
