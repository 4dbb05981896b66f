import type { Vec2 } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apartMm, turned } from '../../../../tests/reference/print/apart.ts';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { packMasters } from './pack-masters.ts';
import { packSheets } from './pack-sheets.ts';
import type { Item, Placement, Space } from './types.ts';

const A4: Space = { widthMm: 194, heightMm: 267 };
const LETTER: Space = { widthMm: 199.9, heightMm: 249.4 };

const box = (widthMm: number, heightMm: number): readonly Vec2[] => [
  [-30, 70],
  [widthMm - 30, 70],
  [widthMm - 30, heightMm + 70],
  [-30, heightMm + 70],
];
const ell = (a: number, b: number, c: number, d: number): readonly Vec2[] => [
  [0, 0],
  [a, 0],
  [a, b],
  [c, b],
  [c, d],
  [0, d],
];
const item = (id: string, outline: readonly Vec2[], kind = id): Item => ({ id, kind, outline });

function pagesOf(items: readonly Item[], space: Space): readonly (readonly Placement[])[] {
  const packed = packSheets(items, space, () => true);
  if (!packed.ok || packed.value === null) throw new Error(JSON.stringify(packed));
  return packed.value;
}

/** mm. What a sum of shifts is off by. */
const ROUNDING_MM = 1e-6;

function expectApartAndInside(items: readonly Item[], placements: readonly Placement[], space: Space): void {
  const outlines = new Map(items.map(({ id, outline }) => [id, outline]));
  const rings = placements.map(({ id, turnRad, shiftMm }) => turned(outlines.get(id)!, turnRad, shiftMm));
  for (const [x, y] of rings.flat()) {
    expect(Math.min(x, y, space.widthMm - x, space.heightMm - y)).toBeGreaterThanOrEqual(-ROUNDING_MM);
  }
  for (const [k, ring] of rings.entries()) {
    for (const other of rings.slice(k + 1)) expect(apartMm(ring, other)).toBeGreaterThanOrEqual(3 - ROUNDING_MM);
  }
}

const mm = (least: number, most: number): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });
/** Points of a star about its middle, near and far by turns as they come. */
const star = fc
  .array(mm(8, 70), { minLength: 3, maxLength: 12 })
  .map((radii) =>
    radii.map(
      (r, k): Vec2 => [r * Math.cos((k * 2 * Math.PI) / radii.length), r * Math.sin((k * 2 * Math.PI) / radii.length)],
    ),
  );
const outline = fc.oneof(
  star,
  fc.tuple(mm(5, 120), mm(5, 120)).map(([w, h]) => box(w, h)),
  fc.tuple(mm(41, 120), mm(5, 40), mm(5, 40), mm(41, 120)).map(([a, b, c, d]) => ell(a, b, c, d)),
);

const seed = freshSeed('packed outlines');

describe('packed outlines', () => {
  it(`are all there, inside the page and at least 3 mm apart, and the same again (seed ${seed})`, () => {
    fc.assert(
      fc.property(fc.array(outline, { minLength: 1, maxLength: 9 }), fc.constantFrom(A4, LETTER), (outlines, space) => {
        const items = outlines.map((ring, k) => item(`${k}`, ring));
        const pages = pagesOf(items, space);
        expect(pages.flatMap((page) => page.map(({ id }) => id)).sort()).toEqual(items.map(({ id }) => id).sort());
        for (const page of pages) expectApartAndInside(items, page, space);
        expect(pagesOf(items, space)).toEqual(pages);
      }),
      { seed, numRuns: share(300, 12) },
    );
  });

  it('fill a page to its last mm, with 3 mm between them', () => {
    expect(pagesOf([item('whole', box(194, 267))], A4)).toEqual([[{ id: 'whole', turnRad: 0, shiftMm: [30, -70] }]]);
    expect(pagesOf([item('left', box(95.5, 267)), item('right', box(95.5, 267))], A4)).toHaveLength(1);
    expect(pagesOf([item('left', box(96, 267)), item('right', box(96, 267))], A4)).toHaveLength(2);
    expect(pagesOf([item('whole', box(199.9, 249.4))], LETTER)).toHaveLength(1);
  });

  it('lie across a page where they fit no other way', () => {
    const [[stick] = []] = pagesOf([item('stick', box(310, 7))], A4);
    // The diagonal of the page is 330 mm long, at 54 degrees.
    expect(Math.abs(Math.tan(stick!.turnRad))).toBeGreaterThan(1.2);
    expect(Math.abs(Math.tan(stick!.turnRad))).toBeLessThan(1.6);
  });

  it('lie in each other where they are hollow', () => {
    const hooks = [item('one', ell(180, 60, 60, 250)), item('two', ell(180, 60, 60, 250))];
    const pages = pagesOf([...hooks, item('small', box(110, 180))], A4);
    expect(pages).toHaveLength(2);
    for (const page of pages) expectApartAndInside([...hooks, item('small', box(110, 180))], page, A4);
  });

  it('lie straight where it makes no difference', () => {
    const [page = []] = pagesOf([item('a', box(80, 80))], A4);
    expect(page.map(({ turnRad }) => turnRad)).toEqual([0]);
    // An equilateral triangle with an upright side: turned by 30 degrees it lies as low as turned by 90.
    const triangle = [0, 1, 2].map(
      (k): Vec2 => [50 * Math.cos((k * 2 * Math.PI) / 3), 50 * Math.sin((k * 2 * Math.PI) / 3)],
    );
    const [[first] = []] = pagesOf([item('one', triangle), item('two', triangle)], A4);
    expectNear(first!.turnRad, Math.PI / 2, { absolute: 1e-12 });
  });

  it('that fit no page are all told', () => {
    const packed = packSheets(
      [item('cube', box(195, 268)), item('cone', box(30, 50)), item('prism', box(331, 5))],
      A4,
      () => true,
    );
    expect(packed).toEqual({
      ok: false,
      issues: [
        { code: 'outline-too-large', path: ['items', 0], details: { id: 'cube', ...A4 } },
        { code: 'outline-too-large', path: ['items', 2], details: { id: 'prism', ...A4 } },
      ],
    });
    expect(() =>
      packSheets(
        [
          item('line', [
            [0, 0],
            [5, 5],
          ]),
        ],
        A4,
        () => true,
      ),
    ).toThrow(RangeError);
  });

  it('are counted while they are packed, and no more once that is stopped', () => {
    const items = Array.from({ length: 7 }, (_, k) => item(`${k}`, box(30, 50)));
    const told: string[] = [];
    const stopped = packSheets(items, A4, (placed, of) => {
      told.push(`${placed}/${of}`);
      return placed < 3;
    });
    expect(stopped).toEqual({ ok: true, value: null });
    expect(told).toEqual(['0/7', '1/7', '2/7', '3/7']);
  });
});

describe('masters', () => {
  const items = [
    item('wall', box(160, 100), 'cylinder'),
    item('disc', box(50, 50), 'cylinder'),
    item('cube', box(190, 150), 'cube'),
    item('half', box(194, 267), 'giant'),
    item('other half', box(194, 267), 'giant'),
  ];

  it('have a page of each kind, with as many whole sets as there is room for', () => {
    const masters = packMasters(items, A4, () => true);
    if (!masters.ok || masters.value === null) throw new Error(JSON.stringify(masters));
    expect(
      masters.value.map(({ kind, sets, pages }) => [kind, sets, pages.map((page) => page.map(({ id }) => id))]),
    ).toEqual([
      ['cylinder', 2, [['wall', 'disc', 'wall', 'disc']]],
      ['cube', 1, [['cube']]],
      ['giant', 1, [['half'], ['other half']]],
    ]);
    for (const { pages } of masters.value) for (const page of pages) expectApartAndInside(items, page, A4);
  });

  it('are counted over all kinds', () => {
    const told: number[] = [];
    packMasters(items, A4, (placed) => told.push(placed) > 0);
    expect(told).toEqual([0, 1, 2, 2, 3, 3, 4, 5]);
    expect(packMasters(items, A4, (placed) => placed < 3)).toEqual({ ok: true, value: null });
  });
});
