// What is left to write on: lines, and labels with a line behind them. And drawings.

import { segment, shifted, solidLine } from '../page/shapes.ts';
import { LINE_SHARE, RISE_SHARE, textWidthMm } from '../text/measure.ts';
import type { Drawing, Fields, Lines } from './blocks.ts';
import type { Room } from './room.ts';
import { lineOf, wrapped } from './room.ts';
import type { Slab } from './slab.ts';
import { slab } from './slab.ts';

/** mm. From one line to the next: the hand of a child writes 8 to 10 mm high (common practice, no source). */
const WRITING_MM = 9;

/** mm and grey of a line to write on: it guides, and does not cross out what stands on it. */
const LINE_MM = 0.25;
const LINE_GREY = 0.4;

export const setLines = ({ count }: Lines, { widthMm, path }: Room): readonly Slab[] =>
  Array.from({ length: count }, () =>
    slab(path, WRITING_MM, [solidLine(segment([0, -WRITING_MM], [widthMm, -WRITING_MM]), LINE_MM, LINE_GREY)], 0),
  );

/** Each field has the same width; a label may take two thirds of it. */
export function setFields({ labels }: Fields, room: Room): readonly Slab[] {
  const eachMm = (room.widthMm - (labels.length - 1) * FIELD_GAP_MM) / labels.length;
  const sizeMm = room.sizes.body;
  const heightMm = Math.max(WRITING_MM, LINE_SHARE * sizeMm);
  const lineMm = heightMm - (LINE_SHARE - RISE_SHARE) * sizeMm;
  const marks = labels.flatMap((label, k) => {
    const set = wrapped(unbroken(label), 'regular', 'body', LABEL_SHARE * eachMm, {
      ...room,
      path: [...room.path, 'labels', k],
    });
    const left = k * (eachMm + FIELD_GAP_MM);
    const { lines, ...type } = set;
    const [text = ''] = lines;
    const startMm = left + textWidthMm(text, type) + LABEL_GAP_MM;
    return [
      shifted(lineOf(text, type, 'left', eachMm, lineMm - RISE_SHARE * type.sizeMm), [left, 0]),
      solidLine(segment([startMm, -lineMm], [left + eachMm, -lineMm]), LINE_MM, LINE_GREY),
    ];
  });
  return [slab(room.path, heightMm, marks, FIELD_GAP_MM / 2)];
}

/** mm. Between fields, and between a label and its line. */
const FIELD_GAP_MM = 6;
const LABEL_GAP_MM = 1.5;

/** No unit. How much of a field its label may take. */
const LABEL_SHARE = 2 / 3;

/** With spaces at which no line ends. */
const unbroken = (label: string): string => label.replaceAll(' ', '\u00a0');

export function setDrawing(drawing: Drawing, room: Room): readonly Slab[] {
  const { widthMm, heightMm, marks, align = 'left' } = drawing;
  if (widthMm > room.widthMm) {
    room.refuse({
      code: 'part-too-wide',
      path: room.path,
      details: { neededMm: widthMm, roomMm: room.widthMm },
    });
  }
  const left = { left: 0, middle: 0.5, right: 1 }[align] * (room.widthMm - widthMm);
  return [
    slab(
      room.path,
      heightMm,
      marks.map((mark) => shifted(mark, [left, -heightMm])),
      DRAWING_GAP_MM,
    ),
  ];
}

/** mm. */
const DRAWING_GAP_MM = 3;
