// What stands on each part of a net, so that parts of many nets on a page are told apart once they are cut out.

import type { NetPart } from '@cairnmark/nets';
import type { PrintWords } from '@cairnmark/words';
import type { Fitted } from './fitted.ts';

/** "Cube"; "Cylinder: base" on a loose disc; "Cube, part 2 of 3" with how it goes on. */
export function partName({ kind: { name: kind }, net, parted }: Fitted, part: NetPart, words: PrintWords): string {
  if (parted.length > 0) {
    return words.say('print.net-part', { kind, part: net.parts.indexOf(part) + 1, parts: net.parts.length });
  }
  const [face] = part.faces;
  if (net.parts.length === 1 || face?.kind !== 'disc') return kind;
  return words.say(face.face === 0 ? 'print.net-base' : 'print.net-top', { kind });
}
