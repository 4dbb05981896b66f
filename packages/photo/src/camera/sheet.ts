// The sheets that a photograph can be measured by, and where their pages lie. Frame of the table: mm, x right, y away, the
// origin in the middle of the sheet.

import type { Vec2 } from '@cairnmark/geometry';
import { FORT_PAGES } from '../ground-sheet.ts';

export type PaperId = 'a4' | 'letter';

/** A ground sheet of one page or of four laid two by two, or a plain page without markers. */
export type Sheet =
  | {
      readonly kind: 'ground';
      readonly paper: PaperId;
      readonly pages: 1 | 4;
      /** What came out of the printer over what should have: 1 where nothing else was measured. */
      readonly printScale: number;
      /** Where the pages were found in another photo of the same sheet; absent: where this photo shows them. */
      readonly places?: readonly PagePlace[];
    }
  | {
      readonly kind: 'plain';
      readonly paper: PaperId;
      /** A plain page looks the same turned half round: true takes it that way round. */
      readonly halfTurned: boolean;
    };

/** Where a page lies: its middle, and how far it is turned, counter-clockwise seen from above. */
export interface PagePlace {
  readonly page: number;
  readonly middleMm: Vec2;
  readonly turnRad: number;
}

/** mm, on its long side. A4: ISO 216. Letter: 11 by 8.5 in, ANSI/ASME Y14.1 (from memory). */
export function paperSizeMm(paper: PaperId): Vec2 {
  return paper === 'a4' ? [297, 210] : [279.4, 215.9];
}

/** Where the pages of a sheet lie when they are laid edge to edge. */
export function pagesOf(paper: PaperId, pages: 1 | 4): readonly PagePlace[] {
  if (pages === 1) return [{ page: 0, middleMm: [0, 0], turnRad: 0 }];
  const [across, along] = paperSizeMm(paper);
  return Array.from({ length: FORT_PAGES }, (_, page) => ({
    page,
    middleMm: [(page % 2 === 0 ? -1 : 1) * (across / 2), (page < 2 ? 1 : -1) * (along / 2)],
    turnRad: 0,
  }));
}

/** A point of a page on the table. */
export function onTable({ middleMm, turnRad }: PagePlace, [x, y]: Vec2): Vec2 {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return [middleMm[0] + c * x - s * y, middleMm[1] + s * x + c * y];
}
