// What the ground sheet says of itself, between two of its markers. mm, about the middle of the page.

import type { Vec2 } from '@cairnmark/geometry';
import type { PrintWords } from '@cairnmark/words';
import type { Block } from '../flow/blocks.ts';
import { setBlocks } from '../flow/set-blocks.ts';
import { SIZES } from '../flow/sizes.ts';
import { stacked } from '../flow/slab.ts';
import type { PrintIssue } from '../issue.ts';
import type { Mark } from '../page/page.ts';
import { shifted } from '../page/shapes.ts';

/**
 * `page` is its number in the sheet for forts, null for the sheet of one page. A fort covers the squares about the corner
 * where the four pages meet; each page is still found by its others.
 */
export function labelOf(page: number | null, words: PrintWords, refuse: (issue: PrintIssue) => void): readonly Mark[] {
  const small = (text: string): readonly Block[] => [{ kind: 'paragraph', size: 'small', text }];
  const title = (texts: readonly string[]): readonly Block[] => [
    { kind: 'paragraph', text: texts.join(': '), font: 'bold' },
  ];
  if (page === null) {
    return [
      ...set(title([words.say('print.ground-one-page')]), [LEFT_MM, ABOVE_MM], refuse),
      ...set(small(words.say('print.ground-how')), [LEFT_MM, BELOW_MM], refuse),
    ];
  }
  const place = words.say(PLACES[page] ?? PLACES[0]);
  return [
    ...set(title([words.say('print.ground-four-pages'), place]), [LEFT_MM, ABOVE_MM], refuse),
    ...set(small(words.say('print.ground-lay')), [LEFT_MM, BELOW_MM], refuse),
    ...set(small(words.say('print.ground-cover')), [RIGHT_MM, BELOW_MM], refuse),
  ];
}

/** Of the four pages as they are laid. */
const PLACES = [
  'print.ground-place-1',
  'print.ground-place-2',
  'print.ground-place-3',
  'print.ground-place-4',
] as const;

/** mm. From a marker to the next there are 84; a cell of 5.3 beside each stays white, so that it is found. */
const [LEFT_MM, RIGHT_MM, WIDTH_MM] = [-94, 22, 72];

/** mm. Upper edges above and below the tick that stands there, and how high the writing may be. */
const [ABOVE_MM, BELOW_MM] = [-63, -83];
const MOST_MM = 11;

function set(blocks: readonly Block[], place: Vec2, refuse: (issue: PrintIssue) => void): readonly Mark[] {
  const { heightMm, marks } = stacked(
    setBlocks(blocks, { widthMm: WIDTH_MM, sizes: SIZES.usual, path: ['label'], refuse }),
  );
  if (heightMm > MOST_MM) {
    refuse({ code: 'part-too-high', path: ['label'], details: { neededMm: heightMm, roomMm: MOST_MM } });
  }
  return marks.map((mark) => shifted(mark, place));
}
