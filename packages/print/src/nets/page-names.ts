// What the foot of a page of nets calls it: on a page to photocopy, the kind and how often it is needed.

import type { PrintWords } from '@cairnmark/words';
import type { NetPage } from './arrange.ts';

export function pageName({ kind, copies }: NetPage, invented: boolean, words: PrintWords): string {
  if (kind === null) return plainName(invented, words);
  const { name } = kind.kind;
  const sheet =
    copies === 1 ? words.say('print.net-once', { kind: name }) : words.say('print.net-copies', { kind: name, copies });
  return invented ? words.say('print.invented', { sheet }) : sheet;
}

/** Without the kind, whose name may be too long for a foot. */
export function plainName(invented: boolean, words: PrintWords): string {
  const sheet = words.say('print.nets');
  return invented ? words.say('print.invented', { sheet }) : sheet;
}
