// The nets of a class of six groups on paper: few sheets, and nothing nearer than scissors need.

import type { PaperSize } from '@cairnmark/print';
import { PAPER_SIZES, packSheets, usableArea } from '@cairnmark/print';
import { expect, it } from 'vitest';
import { inTurn } from '../../tools/share.ts';
import { apartMm, turned } from './apart.ts';
import { paperKit } from './paper-kit.ts';

/** Six sets are 72 nets of 90 pieces. A trial of raster packing on cells of 1 mm took 45 and 51 sheets. */
const MOST: Readonly<Record<PaperSize, number>> = { a4: 45, letter: 48 };

it.each(inTurn(PAPER_SIZES, 2, 'papers'))('six sets of nets lie apart on few sheets of %s', (size) => {
  const items = paperKit(6);
  const outlines = new Map(items.map(({ id, outline }) => [id, outline]));
  const packed = packSheets(items, usableArea({ size, orientation: 'portrait' }), () => true);
  const pages = packed.ok ? (packed.value ?? []) : [];
  expect(
    pages
      .flat()
      .map(({ id }) => id)
      .sort(),
  ).toEqual([...outlines.keys()].sort());
  expect(pages.length).toBeLessThanOrEqual(MOST[size]);
  for (const page of pages) {
    const rings = page.map(({ id, turnRad, shiftMm }) => turned(outlines.get(id)!, turnRad, shiftMm));
    for (const [k, ring] of rings.entries()) {
      for (const other of rings.slice(k + 1)) expect(apartMm(ring, other)).toBeGreaterThanOrEqual(3 - 1e-6);
    }
  }
});
