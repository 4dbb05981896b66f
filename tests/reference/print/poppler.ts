// A PDF as poppler reads it: where its words stand, and how dark the paper is. mm in the frame of a page: x right, y up, the
// origin in the lower left corner.

import { spawnSync } from 'node:child_process';

/** A word as pdftotext finds it, from its left end to its right. */
export interface ReadWord {
  readonly text: string;
  readonly page: number;
  readonly leftMm: number;
  readonly rightMm: number;
}

export function wordsIn(pdf: Uint8Array): readonly ReadWord[] {
  const text = run('pdftotext', ['-bbox', '-', '-'], pdf).toString();
  return text.split('<page ').flatMap((part, page) =>
    [...part.matchAll(/<word xMin="([\d.-]+)" .*? xMax="([\d.-]+)" .*?>(.*?)<\/word>/g)].map(
      ([, left = '', right = '', word = '']) => ({
        text: unescaped(word),
        page: page - 1,
        leftMm: mm(left),
        rightMm: mm(right),
      }),
    ),
  );
}

/** What stands on all pages, in reading order. */
export const textIn = (pdf: Uint8Array): string =>
  run('pdftotext', ['-layout', '-', '-'], pdf).toString().replace(/\s+/g, ' ');

/** How many pages there are, as poppler counts them. */
export const pagesOf = (pdf: Uint8Array): number =>
  run('pdftotext', ['-bbox', '-', '-'], pdf).toString().split('<page ').length - 1;

/** A printer's dots an inch. */
export const DPI = 600;

/** Part of a page as it would be printed. */
export interface Print {
  /** 0 where the paper is white, 1 where it is black. */
  readonly darkness: (xMm: number, yMm: number) => number;
  /** Where the ink along a straight line is, as the way from its beginning: the middle of what is dark. NaN without ink. */
  readonly middleOf: (from: readonly [number, number], to: readonly [number, number]) => number;
}

/** A whole page, drawn with 600 dots an inch. */
export function printOf(pdf: Uint8Array, page: number): Print {
  const image = run('pdftoppm', ['-gray', '-r', `${DPI}`, '-f', `${page + 1}`, '-l', `${page + 1}`, '-'], pdf);
  const header = /^P5\n(\d+) (\d+)\n255\n/.exec(image.subarray(0, 40).toString('latin1'));
  const [begin, width, height] = [header?.[0].length ?? 0, Number(header?.[1]), Number(header?.[2])];
  const darkness = (xMm: number, yMm: number): number => {
    const [column, row] = [(xMm * DPI) / 25.4, height - (yMm * DPI) / 25.4].map(Math.floor) as [number, number];
    if (column < 0 || row < 0 || column >= width || row >= height) throw new RangeError(`(${xMm}, ${yMm}) is no paper`);
    return 1 - image[begin + row * width + column]! / 255;
  };
  const middleOf: Print['middleOf'] = ([x, y], [toX, toY]) => {
    const lengthMm = Math.hypot(toX - x, toY - y);
    const steps = Math.ceil(lengthMm / STEP_MM);
    let [ink, moment] = [0, 0];
    for (let k = 0; k < steps; k += 1) {
      const share = (k + 0.5) / steps;
      const seen = darkness(x + (toX - x) * share, y + (toY - y) * share);
      const dark = seen > SHADE ? seen : 0;
      ink += dark;
      moment += dark * share * lengthMm;
    }
    return moment / ink;
  };
  return { darkness, middleOf };
}

/** Darkness. Tabs are shaded less than this, and lines are drawn darker. */
const SHADE = 0.1;

/** mm. A quarter of a dot. */
const STEP_MM = 25.4 / DPI / 4;

function run(program: string, words: readonly string[], input: Uint8Array): Buffer {
  const { stdout, stderr, status } = spawnSync(program, words, { input, maxBuffer: 2 ** 28 });
  if (status !== 0) throw new Error(`${program}: ${stderr?.toString()}`);
  // Poppler warns there of what it mends.
  if (stderr.length > 0) throw new Error(`${program}: ${stderr.toString()}`);
  return stdout;
}

const mm = (points: string): number => (Number(points) * 25.4) / 72;

const unescaped = (text: string): string =>
  text.replace(
    /&(lt|gt|amp|quot|apos);/g,
    (_, name: string) => ({ lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" })[name] ?? '',
  );
