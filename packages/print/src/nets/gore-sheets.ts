// Paper balls from strips: a teacher's extra, for a class that buys no balls.

import type { Result, Vec2 } from '@cairnmark/geometry';
import { add2, failure } from '@cairnmark/geometry';
import { FLATTEN_MM, flattenPath, makeGores, turnPath } from '@cairnmark/nets';
import type { PrintWords } from '@cairnmark/words';
import type { Block } from '../flow/blocks.ts';
import { setBlocks } from '../flow/set-blocks.ts';
import { SIZES } from '../flow/sizes.ts';
import { stacked } from '../flow/slab.ts';
import { framed, usableArea } from '../frame/frame.ts';
import type { PrintIssue } from '../issue.ts';
import { packSheets } from '../packing/pack-sheets.ts';
import type { Page } from '../page/page.ts';
import type { Paper, PaperSize } from '../page/paper.ts';
import { shifted } from '../page/shapes.ts';
import { unprintableIn } from '../page/unprintable.ts';
import { cutLine } from './lines.ts';

export interface GoreOrder {
  /** Of the ball, as it stands on the paper. */
  readonly name: string;
  readonly radiusMm: number;
  readonly paper: PaperSize;
  readonly invented?: boolean;
}

/** Strips for one ball, with how to go about it. Refused where a strip is longer than the page, or the name unprintable. */
export function goreSheets(
  { name, radiusMm, paper: size, invented = false }: GoreOrder,
  words: PrintWords,
): Result<readonly Page[], PrintIssue> {
  const foreign = unprintableIn(name, ['name']);
  if (foreign.length > 0) return failure(foreign);
  const paper: Paper = { size, orientation: 'portrait' };
  const { cornerMm, widthMm, heightMm } = usableArea(paper);
  const issues: PrintIssue[] = [];
  const head = stacked(
    setBlocks(headOf(name, words), { widthMm, sizes: SIZES.usual, path: ['head'], refuse: (one) => issues.push(one) }),
  );
  if (issues.length > 0) return failure(issues);
  const { gore } = makeGores(radiusMm, GORES);
  const outline = flattenPath(gore, FLATTEN_MM);
  const strips = Array.from({ length: GORES }, () => ({ id: name, kind: name, outline }));
  const packed = packSheets(strips, { widthMm, heightMm: heightMm - head.heightMm - BELOW_HEAD_MM }, () => true);
  // All strips are alike: what is wrong with one is told once.
  if (!packed.ok) return failure(packed.issues.slice(0, 1));
  const topMm: Vec2 = [cornerMm[0], cornerMm[1] + heightMm];
  const pages = (packed.value ?? []).map((placements) => {
    const laid = placements.map(({ turnRad, shiftMm }) => turnPath(gore, turnRad, shiftMm));
    const highestMm = Math.max(...laid.flatMap((path) => flattenPath(path, FLATTEN_MM)).map(([, y]) => y));
    const upMm = heightMm - head.heightMm - BELOW_HEAD_MM - highestMm;
    return [
      ...head.marks.map((mark) => shifted(mark, topMm)),
      ...laid.map((path) => cutLine(turnPath(path, 0, add2(cornerMm, [0, upMm])))),
    ];
  });
  const sheet = words.say('print.gores', { kind: name });
  return framed({ name: invented ? words.say('print.invented', { sheet }) : sheet, paper, pages }, words);
}

/** With twelve the ball stands out by 3.5 % along the seams, 1 / cos 15 degrees; more of them take longer to cut. */
const GORES = 12;

/** mm. */
const BELOW_HEAD_MM = 5;

const headOf = (kind: string, words: PrintWords): readonly Block[] => [
  { kind: 'heading', size: 'title', text: words.say('print.gores', { kind }) },
  { kind: 'paragraph', text: words.say('print.for-teacher'), font: 'bold' },
  { kind: 'paragraph', text: words.say('print.gores-how', { count: GORES }) },
  { kind: 'paragraph', text: words.say('print.net-caution') },
];
