// Laws of the hints, on builds of several solids drawn by lot. The values with and without a slip are worked out here from
// the closed forms of a school book. Lengths mm.

import type { SolidSpec } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { box, factsOf, kit, laid, PLAIN, put } from '../../../../tests/reference/measured-builds.ts';
import { share } from '../../../../tests/tools/share.ts';
import type { OwnLine, Slip } from '../report-types.ts';
import type { ClassPi, OwnRule } from '../types.ts';
import { ownLines } from './own-lines.ts';

const SEED = 20_261_126;
const RUNS = share(2000, 150);
/** Of the slips that are far enough from the right value, at least this share must be named on such builds. */
const NAMED_SHARE = 0.6;

const { PI, sqrt } = Math;

/** A kind as drawn: lengths a, b, c, and how many there are. */
interface Drawn {
  readonly solid: 'cone' | 'drum' | 'tent' | 'ball' | 'brick';
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly times: number;
}

const length = fc.integer({ min: 20, max: 90 });
const drawn: fc.Arbitrary<readonly Drawn[]> = fc.uniqueArray(
  fc.record({
    solid: fc.constantFrom('cone', 'drum', 'tent', 'ball', 'brick'),
    a: length,
    b: length,
    c: length,
    times: fc.integer({ min: 1, max: 3 }),
  }),
  { minLength: 1, maxLength: 4, selector: ({ solid }) => solid },
);
const classPi = fc.constantFrom<ClassPi>('3', '3.14', '22/7', 'key');
const PIS: Readonly<Record<ClassPi, number>> = { '3': 3, '3.14': 3.14, '22/7': 22 / 7, key: PI };

const specs = (pieces: readonly Drawn[]) =>
  kit(Object.fromEntries(pieces.map((piece) => [piece.solid, specOf(piece)])));

function specOf({ solid, a, b, c }: Drawn): SolidSpec {
  switch (solid) {
    case 'cone':
      return { solid: 'cone', sizes: { radius: a, height: b } };
    case 'drum':
      return { solid: 'cylinder', sizes: { radius: a, height: b } };
    case 'tent':
      return { solid: 'rectangular-pyramid', sizes: { length: a, width: b, height: c } };
    case 'ball':
      return { solid: 'sphere', sizes: { radius: a } };
    case 'brick':
      return box(a, b, c);
  }
}

const names = (pieces: readonly Drawn[]): string[] =>
  pieces.flatMap(({ solid, times }) => Array.from({ length: times }, () => solid));

/** How a pupil works out one piece. */
interface Way {
  readonly pi: number;
  readonly radiusTimes?: number;
  readonly third?: number;
  readonly slant?: boolean;
}

function volumeOf({ solid, a, b, c }: Drawn, { pi, radiusTimes = 1, third = 1 / 3, slant = false }: Way): number {
  const r = a * radiusTimes;
  switch (solid) {
    case 'cone':
      return third * pi * r ** 2 * (slant ? sqrt(a ** 2 + b ** 2) : b);
    case 'drum':
      return pi * r ** 2 * b;
    case 'tent':
      // Up the faces that stand on the length a.
      return third * a * b * (slant ? sqrt(c ** 2 + (b / 2) ** 2) : c);
    case 'ball':
      return (4 / 3) * pi * r ** 3;
    case 'brick':
      return a * b * c;
  }
}

const total = (pieces: readonly Drawn[], way: Way): number =>
  pieces.reduce((sum, piece) => sum + piece.times * volumeOf(piece, way), 0);

/** `way` at every kind, or at the first one alone. */
function mixed(pieces: readonly Drawn[], pi: number, way: Partial<Way>, everywhere: boolean): number {
  const [first, ...others] = pieces;
  if (first === undefined) return 0;
  return total([first], { pi, ...way }) + total(others, everywhere ? { pi, ...way } : { pi });
}

/** Volumes with one slip each, by hand. */
function madeBy(slip: Slip, pieces: readonly Drawn[], pi: number, everywhere: boolean): number {
  switch (slip) {
    case 'diameter-for-radius':
      return mixed(pieces, pi, { radiusTimes: 2 }, everywhere);
    case 'radius-for-diameter':
      return mixed(pieces, pi, { radiusTimes: 1 / 2 }, everywhere);
    case 'third-forgotten':
      return mixed(pieces, pi, { third: 1 }, everywhere);
    case 'slant-for-height':
      return mixed(pieces, pi, { slant: true }, everywhere);
    case 'cm-for-mm':
      return total(pieces, { pi }) / 1000;
    case 'other-pi':
      return total(pieces, { pi: pi === 3 ? 3.14 : 3 });
    case 'piece-forgotten': {
      const [first, ...others] = pieces;
      if (first === undefined) return 0;
      return total(everywhere ? others : [{ ...first, times: first.times - 1 }, ...others], { pi });
    }
    default:
      throw new Error(`${slip} is not made in a volume`);
  }
}

const VOLUME_SLIPS = [
  'diameter-for-radius',
  'radius-for-diameter',
  'third-forgotten',
  'slant-for-height',
  'cm-for-mm',
  'other-pi',
  'piece-forgotten',
] as const;

const ruleWith = (pi: ClassPi): OwnRule => ({ pi, closeShare: 0.05, rewards: [{ measure: 'volume', points: 2 }] });

function volumeLine(pieces: readonly Drawn[], value: number, pi: ClassPi, rulerStepMm = 1): OwnLine {
  const layout = { kind: 'numbers-only', pieces: names(pieces) } as const;
  const predicted = [...factsOf(layout, specs(pieces), { ...PLAIN, rulerStepMm }).values()];
  const [line] = ownLines([{ measure: 'volume', value }], ruleWith(pi), { predicted, reported: [] });
  if (line === undefined) throw new Error('no line');
  return line;
}

describe('volumes', () => {
  it.each(VOLUME_SLIPS)(`%s is named, or nothing is [seed ${SEED}]`, (slip) => {
    let [named, told] = [0, 0];
    fc.assert(
      fc.property(drawn, classPi, fc.boolean(), (pieces, pi, everywhere) => {
        const made = madeBy(slip, pieces, PIS[pi], everywhere);
        // A build with nothing left is no slip, and one piece alone cannot be forgotten.
        fc.pre(made > 0);
        const line = volumeLine(pieces, made, pi, 0.1);
        const { verdict, slip: said } = line;
        if (verdict === 'agrees') {
          expect(said).toBeNull();
          return;
        }
        told += 1;
        if (said !== null) named += 1;
        expect([slip, null]).toContain(said);
      }),
      { seed: SEED, numRuns: RUNS },
    );
    expect(named / told, `share named of ${told}`).toBeGreaterThanOrEqual(NAMED_SHARE);
  });

  it(`the right value always agrees, earns its points and has no slip [seed ${SEED}]`, () => {
    fc.assert(
      fc.property(drawn, classPi, fc.double({ min: -0.99, max: 0.99, noNaN: true }), (pieces, pi, part) => {
        const right = total(pieces, { pi: PIS[pi] });
        const { tolerance, expected } = volumeLine(pieces, right, pi);
        expect(Math.abs((expected ?? 0) - right)).toBeLessThanOrEqual(1e-12 * right);
        const line = volumeLine(pieces, right + part * tolerance, pi);
        expect(line).toMatchObject({ verdict: 'agrees', slip: null, points: 2 });
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });
});

describe('towers of boxes', () => {
  /** Boxes that get narrower upwards, so that each contact is the base of the upper one. */
  const tower = fc
    .array(fc.tuple(length, length, length), { minLength: 2, maxLength: 5 })
    .map((boxes) => boxes.map(([l, w, h], level) => [l + 100 * (5 - level), w + 100 * (5 - level), h] as const));

  it.each([
    ['contact-counted-once', (s: number, c: number, t: number) => s - c - t],
    ['added-for-subtracted', (s: number, c: number, t: number) => s + 2 * c - t],
    ['added-for-subtracted', (s: number, c: number, t: number) => s - 2 * c + t],
    ['added-for-subtracted', (s: number, c: number, t: number) => s + 2 * c + t],
  ] as const)(`%s is named, or nothing is (%#) [seed ${SEED}]`, (slip, wrong) => {
    let [named, told] = [0, 0];
    fc.assert(
      fc.property(tower, (boxes) => {
        const kinds = kit(Object.fromEntries(boxes.map(([l, w, h], level) => [`box-${level}`, box(l, w, h)])));
        const predicted = [
          ...factsOf(laid(...boxes.map((_, level) => put(`box-${level}`, 0, 0))), kinds, PLAIN).values(),
        ];
        const s = boxes.reduce((sum, [l, w, h]) => sum + 2 * (l * w + l * h + w * h), 0);
        const [table, ...contacts] = boxes.map(([l, w]) => l * w);
        const c = contacts.reduce((sum, area) => sum + area, 0);
        const [right, line] = ownLines(
          [s - 2 * c - (table ?? 0), wrong(s, c, table ?? 0)].map((value) => ({ measure: 'touchable-surface', value })),
          ruleWith('key'),
          { predicted, reported: [] },
        );
        expect(right).toMatchObject({ verdict: 'agrees', slip: null });
        if (line?.verdict === 'agrees') return;
        told += 1;
        if (line?.slip === slip) named += 1;
        expect([slip, null]).toContain(line?.slip);
      }),
      { seed: SEED, numRuns: share(300, 30) },
    );
    expect(named / told, `share named of ${told}`).toBeGreaterThanOrEqual(NAMED_SHARE);
  });
});
