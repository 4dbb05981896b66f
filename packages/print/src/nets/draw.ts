// Pages of nets as marks: lines, names, letters, and what stands at the foot.

import type { PrintWords } from '@cairnmark/words';
import type { Mark } from '../page/page.ts';
import { turned } from '../page/shapes.ts';
import type { NetPage, PlacedPart } from './arrange.ts';
import { footNote } from './foot-note.ts';
import { lettersOn } from './letters.ts';
import { cutLine, foldLine, tabShade } from './lines.ts';
import { nameOn } from './name-on-face.ts';
import { partName } from './part-names.ts';

export const pageMarks = ({ parts }: NetPage, widthMm: number, words: PrintWords): readonly Mark[] => [
  ...parts.flatMap((placed) => partMarks(placed, words)),
  ...footNote([...new Set(parts.map(({ of }) => of))], widthMm, words),
];

/** Tabs below the folds, and folds below the line to cut: where they end, that is what is cut. */
function partMarks({ of, part, turnRad, shiftMm }: PlacedPart, words: PrintWords): readonly Mark[] {
  const letters = lettersOn(part, of, turnRad);
  const marks: readonly Mark[] = [
    ...part.tabs.map(({ outline }) => tabShade(outline)),
    ...part.folds.map(({ path }) => foldLine(path)),
    cutLine(part.cut),
    ...nameOn(part, partName(of, part, words), turnRad, letters.length === 0 ? 0 : of.net.tabDepthMm),
    ...letters,
  ];
  return marks.map((mark) => turned(mark, turnRad, shiftMm));
}
