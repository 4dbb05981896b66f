// Where a block is set: how wide, in which print, and what to do with what cannot be set.

import type { PrintIssue } from '../issue.ts';
import type { Align, Font, Writing } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import type { Type } from '../text/measure.ts';
import { RISE_SHARE } from '../text/measure.ts';
import { foreignIn } from '../text/win-ansi.ts';
import type { Wrapped } from '../text/wrap.ts';
import { wrap } from '../text/wrap.ts';
import type { Block } from './blocks.ts';
import type { TextSize, TextSizes } from './sizes.ts';
import type { Slab } from './slab.ts';

export interface Room {
  readonly widthMm: number;
  readonly sizes: TextSizes;
  /** Of the block that is set. */
  readonly path: PrintIssue['path'];
  /** Takes what is wrong; the setting goes on, so that all of it is told at once. */
  readonly refuse: (issue: PrintIssue) => void;
  /** Blocks within a block. */
  readonly inside: (blocks: readonly Block[], widthMm: number, path: PrintIssue['path']) => readonly Slab[];
}

/** A text in lines that fit; what cannot be printed or does not fit is refused and left out. */
export function wrapped(text: string, font: Font, size: TextSize, widthMm: number, room: Room): Wrapped {
  const type: Type = { font, sizeMm: room.sizes[size] };
  const foreign = foreignIn(text.replaceAll('\n', ' '));
  for (const character of foreign) {
    room.refuse({ code: 'character-unprintable', path: room.path, details: { character, text } });
  }
  const clean = foreign.reduce((rest, character) => rest.replaceAll(character, ''), text.normalize('NFC'));
  const lines = wrap(clean, type, widthMm, room.sizes.least);
  if ('lines' in lines) return lines;
  room.refuse({
    code: 'text-too-wide',
    path: room.path,
    details: { text: lines.word, neededMm: lines.neededMm, roomMm: widthMm },
  });
  return { ...type, lines: [] };
}

/** A line of writing in a slab whose top is `topMm` above it; x by how it is aligned in the width. */
export function lineOf(text: string, type: Type, align: Align, widthMm: number, topMm: number): Writing {
  const x = { left: 0, middle: widthMm / 2, right: widthMm }[align];
  const at = [x, -topMm - RISE_SHARE * type.sizeMm] as const;
  return { kind: 'writing', text, at, align, font: type.font, sizeMm: type.sizeMm, turnRad: 0, grey: BLACK };
}
