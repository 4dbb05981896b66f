// What the ground sheet says of itself, between two of its markers. mm, about the middle of the page.

import type { PrintWords } from '@cairnmark/words';
import type { Block } from '../flow/blocks.ts';
import { setBlocks } from '../flow/set-blocks.ts';
import { SIZES } from '../flow/sizes.ts';
import { stacked } from '../flow/slab.ts';
import type { PrintIssue } from '../issue.ts';
import type { Mark } from '../page/page.ts';
import { shifted } from '../page/shapes.ts';

/** `page` is its number in the sheet for forts, null for the sheet of one page. */
export function labelOf(page: number | null, words: PrintWords, refuse: (issue: PrintIssue) => void): readonly Mark[] {
  const place = page === null ? [] : [PLACES[page] ?? PLACES[0]].map((key) => words.say(key));
  const above: readonly Block[] = [
    { kind: 'paragraph', text: [words.say('print.ground-title'), ...place].join(': '), font: 'bold' },
  ];
  const how = page === null ? 'print.ground-how' : 'print.ground-lay';
  const below: readonly Block[] = [{ kind: 'paragraph', size: 'small', text: words.say(how) }];
  return [...set(above, ABOVE_MM, refuse), ...set(below, BELOW_MM, refuse)];
}

/** Of the four pages as they are laid. */
const PLACES = [
  'print.ground-place-1',
  'print.ground-place-2',
  'print.ground-place-3',
  'print.ground-place-4',
] as const;

/** mm. From the lower left marker to the next there are 84; a cell of 5.3 beside each stays white, so that it is found. */
const [LEFT_MM, WIDTH_MM] = [-94, 72];

/** mm. Upper edges above and below the tick that stands there, and how high the writing may be. */
const [ABOVE_MM, BELOW_MM] = [-63, -83];
const MOST_MM = 11;

function set(blocks: readonly Block[], topMm: number, refuse: (issue: PrintIssue) => void): readonly Mark[] {
  const { heightMm, marks } = stacked(
    setBlocks(blocks, { widthMm: WIDTH_MM, sizes: SIZES.usual, path: ['label'], refuse }),
  );
  if (heightMm > MOST_MM) {
    refuse({ code: 'part-too-high', path: ['label'], details: { neededMm: heightMm, roomMm: MOST_MM } });
  }
  return marks.map((mark) => shifted(mark, [LEFT_MM, topMm]));
}
