// What a challenge asks for and nobody can read off a build or count there: the app works it out, from the pieces or from
// where they stand.

import type { Block } from '../flow/blocks.ts';
import { askedFor } from './asked-for.ts';
import type { SheetContext } from './context.ts';

/** A line for each of the two ways, where a measure needs it; [] where all that is asked for can be written down. */
export function workedOut(context: SheetContext): readonly Block[] {
  const { challenge, inClass, say, words } = context;
  const measures = [...askedFor(challenge)].filter((id) => !WRITTEN.has(id) && !id.includes(':'));
  const told = (ids: readonly string[], key: 'print.record-stack' | 'print.record-kinds'): readonly Block[] => {
    if (ids.length === 0) return [];
    const names = words.words.capital(words.words.listed(ids.map((id) => inClass.label(id))));
    return [{ kind: 'paragraph', size: 'small', text: say(key, { measures: names }) }];
  };
  return [
    ...told(
      measures.filter((id) => !OF_THE_PIECES.has(id)),
      'print.record-stack',
    ),
    ...told(
      measures.filter((id) => OF_THE_PIECES.has(id)),
      'print.record-kinds',
    ),
  ];
}

/** With a column on the sheet, or no measure of a build; marks, and what the game earns, have sheets of their own. */
const WRITTEN: ReadonlySet<string> = new Set(['height', 'pieces', 'stood-seconds', 'points']);

/** The same however the pieces are put together. */
const OF_THE_PIECES: ReadonlySet<string> = new Set([
  'kinds',
  'full-sets',
  'faces',
  'edges',
  'corners',
  'flat-faces',
  'curved-surfaces',
  'straight-edges',
  'curved-edges',
  'vertices',
  'volume',
  'paper',
  'volume-per-paper',
]);
