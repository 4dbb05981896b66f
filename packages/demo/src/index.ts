// The class of Skerry Light: six crews, three challenges, one day. All of it is invented.

import type { Records } from '@cairnmark/formats';
import { decode } from '@cairnmark/formats';
import file from './skerry-light.json' with { type: 'json' };

/** The demo class as the text of a class file. */
export const demoText = `${JSON.stringify(file, null, 2)}\n`;

/** The demo class as a record. */
export function demoClass(): Records['class'] {
  const decoded = decode(demoText, 'class');
  if (!decoded.ok) throw new RangeError(`the demo class is refused: ${JSON.stringify(decoded.issues)}`);
  return decoded.value.value;
}
