// Nets on sheets of paper, against a packer of boxes: maxrects-packer (MIT), which lays the smallest level or upright box
// round each piece, 3 mm apart. How many sheets each takes, and the time of ours.

import type { Item, Space } from '@cairnmark/print';
import { PAPER_SIZES, packSheets, usableArea } from '@cairnmark/print';
import { MaxRectsPacker } from 'maxrects-packer';
import { paperKit } from '../reference/print/paper-kit.ts';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'nets on paper: sheets and time, beside a packer of boxes';

const SETS = 6;

/** Sheets that are aimed at for six sets. */
const TARGETS = { a4: 48, letter: 54 } as const;

export function run(report: Report): void {
  const items = paperKit(SETS);
  for (const size of PAPER_SIZES) {
    const space = usableArea({ size, orientation: 'portrait' });
    const [ours, boxes] = [sheetsOf(items, space), boxSheetsOf(items, space)];
    report({ label: `${size}: sheets for ${SETS} sets`, value: ours, unit: '', target: `at most ${TARGETS[size]}` });
    report({ label: `${size}: sheets, of those of boxes`, value: ours / boxes, unit: 'x', target: 'under 0.8' });
    const { outlines, rectangles } = interleave(
      { outlines: () => sheetsOf(items, space), rectangles: () => boxSheetsOf(items, space) },
      3,
    );
    report({ label: `${size}: time, of that of boxes`, value: outlines / rectangles, unit: 'x' });
    report({ label: `${size}: time`, value: outlines, unit: 'ms', target: 'under 10 000' });
  }
}

function sheetsOf(items: readonly Item[], space: Space): number {
  const packed = packSheets(items, space, () => true);
  if (!packed.ok || packed.value === null) throw new Error(JSON.stringify(packed));
  return packed.value.length;
}

/** mm. Between boxes, as between outlines. */
const GAP_MM = 3;

function boxSheetsOf(items: readonly Item[], { widthMm, heightMm }: Space): number {
  const packer = new MaxRectsPacker(widthMm, heightMm, GAP_MM, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: true,
  });
  for (const { outline, id } of items) {
    const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
    packer.add(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys), id);
  }
  return packer.bins.length;
}
