// What holds for every sheet: all of it stands on its page, and no writing on another.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import { boundsOf } from '../bounds-of.ts';
import { usableArea } from '../frame/frame.ts';
import type { Block, Cell } from './blocks.ts';
import { layOut } from './lay-out.ts';

const seed = freshSeed('sheets');

const words = fc
  .array(fc.constantFrom('cube', 'Edge', '¿qué', 'prisma', 'hexagonal', 'of', 'ñandú', '5 cm'), {
    minLength: 1,
    maxLength: 25,
  })
  .map((list) => list.join(' '));
const size = fc.constantFrom('small', 'body', 'large');
const simple: fc.Arbitrary<Block> = fc.oneof(
  fc.record({ kind: fc.constant('heading'), text: words, size: fc.constantFrom('title', 'heading') }),
  fc.record({ kind: fc.constant('paragraph'), text: words, size, align: fc.constantFrom('left', 'middle', 'right') }),
  fc.record({
    kind: fc.constant('list'),
    mark: fc.constantFrom('point', 'number', 'box'),
    items: fc.array(words, { minLength: 1, maxLength: 12 }),
    size,
  }),
  fc.record({ kind: fc.constant('lines'), count: fc.integer({ min: 1, max: 40 }) }),
  fc.constant<Block>({ kind: 'fields', labels: ['Grupo', 'Date'] }),
);
const cell: fc.Arbitrary<Cell> = fc.oneof(fc.constant(''), words, fc.array(simple, { maxLength: 2 }));
const table: fc.Arbitrary<Block> = fc.record({
  kind: fc.constant('table'),
  rules: fc.constantFrom('grid', 'cut', 'none'),
  stands: fc.constantFrom('top', 'middle'),
  columns: fc.constant([{ widthMm: 47 }, { share: 1 }, { share: 2 }]),
  head: fc.tuple(words, cell, cell),
  rows: fc.array(fc.record({ cells: fc.tuple(cell, cell, cell), leastMm: fc.integer({ min: 0, max: 60 }) }), {
    minLength: 1,
    maxLength: 5,
  }),
});
const columns: fc.Arbitrary<Block> = fc.record({
  kind: fc.constant('columns'),
  columns: fc.array(fc.record({ share: fc.integer({ min: 2, max: 3 }), blocks: fc.array(simple, { maxLength: 2 }) }), {
    minLength: 2,
    maxLength: 2,
  }),
});
const blocks = fc.array(fc.oneof(simple, table, columns), { minLength: 1, maxLength: 6 });

/** mm. Half the width of the widest line: a frame is drawn along the very edge. */
const LINE_MM = 0.16;

it(`all stands on its page, and no writing on another (seed ${seed})`, () => {
  let set = 0;
  fc.assert(
    fc.property(
      blocks,
      fc.constantFrom('a4', 'letter'),
      fc.constantFrom('usual', 'large'),
      (list, paperSize, print) => {
        const paper = { size: paperSize, orientation: 'portrait' } as const;
        const sheet = layOut('Sheet', list, { paper, print, mostPages: 1000 });
        if (!sheet.ok) return;
        set += 1;
        const { cornerMm, widthMm, heightMm } = usableArea(paper);
        for (const marks of sheet.value.pages) {
          const bounds = marks.map(boundsOf);
          for (const { left, right, bottom, top } of bounds) {
            expect(left).toBeGreaterThanOrEqual(cornerMm[0] - LINE_MM);
            expect(right).toBeLessThanOrEqual(cornerMm[0] + widthMm + LINE_MM);
            expect(bottom).toBeGreaterThanOrEqual(cornerMm[1] - LINE_MM);
            expect(top).toBeLessThanOrEqual(cornerMm[1] + heightMm + LINE_MM);
          }
          const texts = bounds.filter((_, k) => marks[k]!.kind === 'writing').sort((a, b) => b.top - a.top);
          for (const [k, one] of texts.entries()) {
            for (const other of texts.slice(k + 1)) {
              if (other.top <= one.bottom) break;
              expect(one.left < other.right - 1e-9 && other.left < one.right - 1e-9).toBe(false);
            }
          }
        }
      },
    ),
    { seed, numRuns: share(1000, 60) },
  );
  expect(set).toBeGreaterThan(share(300, 15));
});
