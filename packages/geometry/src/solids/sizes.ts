// Reads the sizes of a solid as a kit writes them, in whatever way pupils measured, and gives them in the solid's own
// terms. Lengths in mm. Every fault is told at once; a size that could not be read is NaN, which no later check blames.

import type { Result } from '../kernel/result.ts';
import { failure, success } from '../kernel/result.ts';
import type { FactorName, SizeIssue, SizeIssueCode, Sizes, SizeWay, SlopeName } from './types.ts';

/** mm. No piece of a classroom build is longer than ten metres; a larger number is a slip of unit or of typing. */
export const LARGEST_SIZE_MM = 10_000;
/** mm. A tenth of the finest division of a school ruler, and twice the gap that counts as contact. */
export const SMALLEST_SIZE_MM = 0.1;
/** Sides of the polygon under a prism, pyramid, frustum or antiprism. Beyond twelve, folded paper is a cylinder. */
export const FEWEST_SIDES = 3;
export const MOST_SIDES = 12;

/** The sizes of a solid in its own terms. */
export type SizesOf<Name extends string> = Readonly<Record<Name, number>>;

/**
 * Another measurement that gives a size. `times`: the size is so many times the measurement. `run`: the measurement is
 * a slant, the size is the height, and the slant reaches over this length of the base. Both may use sizes that stand
 * earlier in the list of fields.
 */
export interface Factor<Name extends string> {
  readonly times: (sizes: SizesOf<Name>) => number;
}

export interface Slope<Name extends string> {
  readonly run: (sizes: SizesOf<Name>) => number;
}

type Ways<Name extends string> = Readonly<Partial<Record<FactorName, Factor<Name>> & Record<SlopeName, Slope<Name>>>>;

export interface Field<Name extends string> {
  readonly name: Name;
  readonly unit: 'mm' | 'count';
  readonly ways: Ways<Name>;
}

/** A length that is measured as it is. */
export const lengthField = <Name extends string>(name: Name): Field<Name> => ({ name, unit: 'mm', ways: {} });

/** A radius, which pupils measure across or around. */
export const radiusField = <Name extends string>(name: Name, across: FactorName, around: FactorName): Field<Name> => ({
  name,
  unit: 'mm',
  ways: { [across]: { times: () => 1 / 2 }, [around]: { times: () => 1 / (2 * Math.PI) } },
});

/** The ways of all fields in numbers, for a piece of these sizes. */
export const waysOf = <Name extends string>(fields: readonly Field<Name>[], own: SizesOf<Name>): readonly SizeWay[] =>
  fields.flatMap(({ name: of, ways }) => [
    ...FACTOR_NAMES.flatMap((name): SizeWay[] => {
      const way = ways[name];
      return way === undefined ? [] : [{ kind: 'factor', name, of, times: way.times(own) }];
    }),
    ...SLOPE_NAMES.flatMap((name): SizeWay[] => {
      const way = ways[name];
      return way === undefined ? [] : [{ kind: 'slope', name, of, runMm: way.run(own) }];
    }),
  ]);

const FACTOR_NAMES: readonly FactorName[] = [
  'diameter',
  'circumference',
  'topDiameter',
  'topCircumference',
  'topWidth',
];
const SLOPE_NAMES: readonly SlopeName[] = ['slant', 'slantLength', 'slantWidth', 'slantEdge'];

/** How many sides the polygon has. */
export const SIDES_FIELD: Field<'sides'> = { name: 'sides', unit: 'count', ways: {} };

/**
 * `given` in the solid's own terms, in the order of `fields`, or every fault of it. `rules` says what the sizes must
 * keep among themselves; it may meet NaN for a size that is at fault already.
 */
export function readSizes<Name extends string>(
  fields: readonly Field<Name>[],
  rules: (sizes: SizesOf<Name>) => readonly SizeIssue[],
  given: Sizes,
): Result<SizesOf<Name>, SizeIssue> {
  const issues: SizeIssue[] = [];
  const known = new Set<string>();
  let sizes = {} as SizesOf<Name>;
  for (const field of fields) {
    const names = [field.name, ...Object.keys(field.ways)];
    for (const name of names) known.add(name);
    const used = names.filter((name) => given[name] !== undefined);
    const read = readField(field, used, given, sizes);
    if (typeof read !== 'number') issues.push(read);
    sizes = { ...sizes, [field.name]: typeof read === 'number' ? read : Number.NaN };
  }
  for (const name of Object.keys(given)) if (!known.has(name)) issues.push(sizeIssue('size-unknown', name));
  issues.push(...rules(sizes));
  return issues.length === 0 ? success(sizes) : failure(issues);
}

export const sizeIssue = (
  code: SizeIssueCode,
  name: string,
  details: Readonly<Record<string, string | number>> = {},
): SizeIssue => ({ code, path: [name], details });

/** The rule of every frustum: the top is smaller than the base. */
export const notUpsideDown = (topName: string, topMm: number, baseMm: number): readonly SizeIssue[] =>
  topMm >= baseMm ? [sizeIssue('frustum-upside-down', topName, { topMm, baseMm })] : [];

function readField<Name extends string>(
  field: Field<Name>,
  used: readonly string[],
  given: Sizes,
  sizes: SizesOf<Name>,
): number | SizeIssue {
  const [name, second] = used;
  if (name === undefined) return sizeIssue('size-missing', field.name);
  if (second !== undefined) return sizeIssue('size-given-twice', second, { first: name });
  const value = given[name] ?? Number.NaN;
  if (!Number.isFinite(value)) return sizeIssue('size-not-finite', name);
  if (field.unit === 'count') return readSides(name, value);
  if (value <= 0) return sizeIssue('size-not-positive', name, { sizeMm: value });
  const way = wayNamed(field, name);
  return way === undefined ? withinLimits(name, value) : readWay(name, value, way, sizes);
}

const wayNamed = <Name extends string>(field: Field<Name>, name: string): Factor<Name> | Slope<Name> | undefined =>
  new Map<string, Factor<Name> | Slope<Name>>(Object.entries(field.ways)).get(name);

function readSides(name: string, sides: number): number | SizeIssue {
  if (!Number.isInteger(sides)) return sizeIssue('sides-not-whole', name, { sides });
  if (sides >= FEWEST_SIDES && sides <= MOST_SIDES) return sides;
  return sizeIssue('sides-out-of-range', name, { sides, fewest: FEWEST_SIDES, most: MOST_SIDES });
}

function readWay<Name extends string>(
  name: string,
  value: number,
  way: Factor<Name> | Slope<Name>,
  sizes: SizesOf<Name>,
): number | SizeIssue {
  if ('times' in way) return withinLimits(name, value * way.times(sizes));
  const run = way.run(sizes);
  if (value <= run) return sizeIssue('slant-too-short', name, { slantMm: value, runMm: run });
  return withinLimits(name, Math.sqrt((value - run) * (value + run)));
}

/** `sizeMm` is the size in the solid's own terms, `name` the one under which it was given. */
function withinLimits(name: string, sizeMm: number): number | SizeIssue {
  if (sizeMm > LARGEST_SIZE_MM) return sizeIssue('size-too-large', name, { sizeMm, mostMm: LARGEST_SIZE_MM });
  if (sizeMm < SMALLEST_SIZE_MM) return sizeIssue('size-too-small', name, { sizeMm, leastMm: SMALLEST_SIZE_MM });
  return sizeMm;
}
