// Objects put together to a file (ISO 32000-1, chapter 7.5): header, objects, table of where they begin, trailer.

export interface Trailer {
  /** Number of the catalogue, of 1 and more. */
  readonly root: number;
  /** Number of what the document says of itself. */
  readonly info: number;
}

/** `objects` are numbered from 1; all in ASCII, so that characters are bytes. The same objects give the same bytes. */
export function fileOf(objects: readonly string[], { root, info }: Trailer): Uint8Array {
  let text = '%PDF-1.4\n';
  const begins = objects.map((object, k) => {
    const begin = text.length;
    text += `${k + 1} 0 obj\n${object}\nendobj\n`;
    return begin;
  });
  const table = text.length;
  const count = objects.length + 1;
  text += `xref\n0 ${count}\n0000000000 65535 f \n${begins.map(entryOf).join('')}`;
  text += `trailer\n<< /Size ${count} /Root ${root} 0 R /Info ${info} 0 R >>\nstartxref\n${table}\n%%EOF\n`;
  return Uint8Array.from(text, (character) => character.charCodeAt(0));
}

/** Twenty bytes, the line feed included. */
const entryOf = (begin: number): string => `${String(begin).padStart(10, '0')} 00000 n \n`;
