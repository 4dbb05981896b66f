// Pages of nets for the demo class: what stands where is measured on the page, against the nets and by poppler.

import type { Vec2 } from '@cairnmark/geometry';
import type { NetPart } from '@cairnmark/nets';
import { flattenPath, makeNet } from '@cairnmark/nets';
import type { Mark, NetOrder, NetSheets, Page, PaperSize, Stroke, Writing } from '@cairnmark/print';
import { netSheets, PAPER_SIZES, textWidthMm, usableArea, writePdf } from '@cairnmark/print';
import { printWords } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { hasPoppler } from '../../tools/poppler.mjs';
import { inTurn } from '../../tools/share.ts';
import { expectNear } from '../../tools/within.ts';
import { apartMm } from './apart.ts';
import { demoKinds } from './net-kinds.ts';
import { printOf } from './poppler.ts';

const TAB_MM = 8;

function sheetsOf(order: Partial<NetOrder> & Pick<NetOrder, 'kinds'>, language: 'en' | 'es' = 'en'): NetSheets {
  const whole: NetOrder = { paper: 'a4', arrange: 'mixed', tabDepthMm: TAB_MM, large: 'tell', ...order };
  const sheets = netSheets(whole, printWords(language), () => true);
  if (!sheets.ok || sheets.value === null) throw new Error(JSON.stringify(sheets));
  return sheets.value;
}

const isFold = (mark: Mark): mark is Stroke => mark.kind === 'stroke' && mark.dashMm.length > 0;
const isCut = (mark: Mark): mark is Stroke => mark.kind === 'stroke' && mark.path.closed;

/** mm. How far straight pieces may be off a curve here, and what a sum of shifts is off by. */
const [FLAT_MM, ROUNDING_MM] = [0.02, 1e-6];

const ring = ({ path }: Stroke): readonly Vec2[] => flattenPath(path, FLAT_MM);

/** Lines as rings of two corners each. */
const sidesOf = (stroke: Stroke): (readonly Vec2[])[] => {
  const points = ring(stroke);
  const closed = stroke.path.closed ? [...points, points[0]!] : points;
  return closed.slice(1).map((to, k) => [closed[k]!, to]);
};

/** Corners of the box round the ink of a line: from the tail of g to the top of capitals (Helvetica.afm). */
function inkOf({ text, at: [x, y], align, font, sizeMm, turnRad }: Writing): readonly Vec2[] {
  const lengthMm = textWidthMm(text, { font, sizeMm });
  const left = -{ left: 0, middle: 0.5, right: 1 }[align] * lengthMm;
  const corners: readonly Vec2[] = [
    [left, -0.207 * sizeMm],
    [left + lengthMm, -0.207 * sizeMm],
    [left + lengthMm, 0.718 * sizeMm],
    [left, 0.718 * sizeMm],
  ];
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return corners.map(([a, b]) => [x + cos * a - sin * b, y + sin * a + cos * b]);
}

/** Names and letters; the foot stands below. */
const writingOn = ({ marks }: Page): Writing[] =>
  marks.filter((mark): mark is Writing => mark.kind === 'writing' && mark.at[1] > 22);

function expectInside({ marks }: Page, size: PaperSize): void {
  const { cornerMm, widthMm, heightMm } = usableArea({ size, orientation: 'portrait' });
  for (const [x, y] of marks.filter(isCut).flatMap(ring)) {
    const least = Math.min(x - cornerMm[0], y - cornerMm[1], cornerMm[0] + widthMm - x, cornerMm[1] + heightMm - y);
    expect(least).toBeGreaterThanOrEqual(-ROUNDING_MM);
  }
}

function expectApart({ marks }: Page): void {
  const rings = marks.filter(isCut).map(ring);
  for (const [k, one] of rings.entries()) {
    for (const other of rings.slice(k + 1)) expect(apartMm(one, other)).toBeGreaterThanOrEqual(3 - ROUNDING_MM);
  }
}

/** Writing lies over no line and over no other writing, and is readable from below or from the right. */
function expectReadable(page: Page): void {
  const sides = page.marks.filter((mark) => isCut(mark) || isFold(mark)).flatMap(sidesOf);
  const inks = writingOn(page).map(inkOf);
  for (const [k, ink] of inks.entries()) {
    for (const side of sides) expect(apartMm(ink, side)).toBeGreaterThan(0.3);
    for (const other of inks.slice(k + 1)) expect(apartMm(ink, other)).toBeGreaterThan(0.3);
  }
  for (const { turnRad } of writingOn(page)) expect(Math.cos(turnRad)).toBeGreaterThan(-1e-9);
}

describe('six sets of the demo kit', () => {
  // Asked for are 48 and 54; measured are 42 and 45.
  const MOST = { a4: 48, letter: 54 } as const;

  it.each(inTurn(PAPER_SIZES, 2, 'papers'))(
    'lie apart on few pages of %s, all of them, inside its margins',
    (paper) => {
      const kinds = demoKinds(6);
      const { pages, counts, leftOut } = sheetsOf({ kinds, paper });
      expect(pages.length).toBeLessThanOrEqual(MOST[paper]);
      expect([[...counts.values()], leftOut]).toEqual([kinds.map(() => 6), []]);
      const names = pages.flatMap(writingOn).map(({ text }) => text);
      for (const { name } of kinds) expect(names.filter((text) => text === name)).toHaveLength(6);
      expect(pages.flatMap(({ marks }) => marks.filter(isCut))).toHaveLength(90);
      for (const page of pages) {
        expectInside(page, paper);
        expectApart(page);
      }
    },
  );
});

it.each(inTurn(PAPER_SIZES, 2, 'papers of names'))(
  'names and letters keep off lines and off each other on %s, nets in parts too',
  (paper) => {
    const language = paper === 'a4' ? 'en' : 'es';
    const whole = sheetsOf({ kinds: demoKinds(1), paper, arrange: 'masters' }, language);
    // A name that would reach from side to side, where the letters are.
    const named = demoKinds(1, 1.5).map((kind) => ({ ...kind, name: `${kind.name} for the harbour wall` }));
    const large = sheetsOf({ kinds: named, paper, large: 'split' }, language);
    expect(large.pages.length).toBeGreaterThan(whole.pages.length);
    for (const page of [...whole.pages, ...large.pages]) {
      expectInside(page, paper);
      expectApart(page);
      expectReadable(page);
    }
  },
);

/** Every distance between two corners: what a turn and a shift leave as it is. */
const shapeOf = (points: readonly Vec2[]): number[] =>
  points.flatMap(([x, y], k) => points.slice(k + 1).map(([a, b]) => Math.hypot(a - x, b - y)));

const cornersOf = ({ path: { start, steps } }: Pick<Stroke, 'path'>): readonly Vec2[] => [
  start,
  ...steps.map(({ to }) => to),
];

/** Which way round: a mirrored net would fold to a mirrored solid. */
const isLeftTurning = (points: readonly Vec2[]): boolean =>
  points.reduce((sum, [x, y], k) => {
    const [a, b] = points[(k + 1) % points.length]!;
    return sum + x * b - y * a;
  }, 0) > 0;

it('a net on a page is the net, turned and shifted', () => {
  for (const kind of demoKinds(1)) {
    const net = makeNet(kind.solid, { tabDepthMm: TAB_MM });
    if (!net.ok) throw new Error(JSON.stringify(net.issues));
    const { pages } = sheetsOf({ kinds: [kind] });
    const cuts = pages.flatMap(({ marks }) => marks.filter(isCut));
    const folds = pages.flatMap(({ marks }) => marks.filter((mark) => isFold(mark) && mark.path.start[1] > 22));
    const likeNet = (part: NetPart): void => {
      const index = cuts.findIndex(({ path }) => path.steps.length === part.cut.steps.length);
      const [cut] = cuts.splice(index, 1);
      const own = part.folds.flatMap(({ path }) => cornersOf({ path }));
      const drawn = (folds.splice(0, part.folds.length) as Stroke[]).flatMap(cornersOf);
      const [expected, found] = [
        shapeOf([...cornersOf({ path: part.cut }), ...own]),
        shapeOf([...cornersOf(cut!), ...drawn]),
      ];
      expect(found).toHaveLength(expected.length);
      found.forEach((mm, k) => {
        expectNear(mm, expected[k]!, { absolute: 1e-9 }, `${kind.name}, distance ${k}`);
      });
      expect(isLeftTurning(cornersOf(cut!))).toBe(true);
    };
    // Discs have no folds, and the two of a cylinder are alike.
    for (const part of net.value.parts) likeNet(part);
    expect([cuts, folds]).toEqual([[], []]);
  }
});

/** mm. What a line may be beside its place: a third of its width. */
const LINE_MM = 0.1;

describe.skipIf(!hasPoppler())('printed nets', () => {
  it.each(inTurn(PAPER_SIZES, 2, 'papers'))('have their lines where they should be, on %s', (paper) => {
    const kinds = demoKinds(1).filter(({ id }) => ['cone', 'hex-prism', 'icosahedron'].includes(id));
    const { pages } = sheetsOf({ kinds, paper });
    const pdf = writePdf(pages, 'Nets', 'en');
    if (!pdf.ok) throw new Error(JSON.stringify(pdf.issues));
    let sampled = 0;
    for (const [k, page] of pages.entries()) {
      const print = printOf(pdf.value, k);
      const inks = writingOn(page).map(inkOf);
      const sides = page.marks
        .filter((mark) => isCut(mark) || isFold(mark))
        .flatMap((line) => sidesOf(line).map((side) => ({ side, dashed: isFold(line) })));
      for (const { side, dashed } of sides) {
        const [[x, y], [a, b]] = side as [Vec2, Vec2];
        const lengthMm = Math.hypot(a - x, b - y);
        // Across the line: in its middle, or through the first of its dashes.
        const share = dashed ? 1 / lengthMm : 0.5;
        const [middleX, middleY] = [x + (a - x) * share, y + (b - y) * share];
        const [acrossX, acrossY] = [-(b - y) / lengthMm, (a - x) / lengthMm];
        const scan: readonly [Vec2, Vec2] = [
          [middleX - acrossX, middleY - acrossY],
          [middleX + acrossX, middleY + acrossY],
        ];
        const others = [...inks, ...sides.flatMap((other) => (other.side === side ? [] : [other.side]))];
        if (lengthMm < 5 || others.some((other) => apartMm(scan, other) < 0.5)) continue;
        sampled += 1;
        expectNear(print.middleOf(...scan) - 1, 0, { absolute: LINE_MM }, `page ${k}, line at ${middleX}, ${middleY}`);
      }
    }
    expect(sampled).toBeGreaterThan(60);
  });

  it('are the same bytes twice', () => {
    const bytes = (): string => {
      const pdf = writePdf(
        sheetsOf({ kinds: demoKinds(1).slice(6), paper: 'letter' }, 'es').pages,
        'Desarrollos',
        'es',
      );
      return pdf.ok ? Buffer.from(pdf.value).toString('latin1') : '';
    };
    const [first, second] = [bytes(), bytes()];
    expect(first.length).toBeGreaterThan(10_000);
    expect(second === first).toBe(true);
  });
});
