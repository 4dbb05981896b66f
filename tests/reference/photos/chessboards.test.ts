// Real photographs of chessboards (opencv-doc), measured from the border of their grid. They stand for real lenses, which the
// rendered towers do not have.

import { describe, expect, it } from 'vitest';
import { quantile } from './accuracy.ts';
import { measuredBoards } from './chessboards.ts';
import { chessboardsThere } from './opencv.ts';

describe.skipIf(!chessboardsThere)('26 photographs of a chessboard', () => {
  it('lengths of 125 to 200 mm: 95 % within 0.5 %', () => {
    const boards = measuredBoards();
    expect(boards.length).toBe(26);
    const off = boards.flatMap(({ lengthsOff }) => lengthsOff);
    process.stdout.write(
      `chessboards: ${off.length} lengths, median ${(100 * quantile(off, 0.5)).toFixed(2)} %, ` +
        `95 % within ${(100 * quantile(off, 0.95)).toFixed(2)} %\n`,
    );
    // Of the 54 corners of a board, 453 pairs are so far apart.
    expect(off.length).toBe(26 * 453);
    expect(quantile(off, 0.95)).toBeLessThan(0.005);
  });
});
