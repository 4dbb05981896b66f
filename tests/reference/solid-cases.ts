// Runs a check on every solid of the catalogue: on its example, and on sizes drawn by lot from a fixed seed.

import type { Sizes, Solid, SolidDefinition, SolidSpec } from '@cairnmark/geometry';
import { CATALOGUE, definitionOf } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, test } from 'vitest';
import { share } from '../tools/share.ts';

const SEED = 35711;

/** One test a solid, for its example and `full` random sizes (`part` of them in the ordinary run). */
export function onEverySolid(
  title: string,
  { full, part }: { readonly full: number; readonly part: number },
  check: (solid: Solid, definition: SolidDefinition) => void,
): void {
  describe(title, () => {
    test.each(Object.values(CATALOGUE))(`$id, seed ${SEED}`, (definition) => {
      check(made(definition, definition.example), definition);
      const property = fc.property(sizesFor(definition), (sizes) => check(made(definition, sizes), definition));
      fc.assert(property, { seed: SEED, numRuns: share(full, part) });
    });
  });
}

/** The solid with every length of `spec` times `mm`; throws when its sizes are refused. */
export function solidOf({ solid, sizes }: SolidSpec, mm = 1): Solid {
  const lengths = Object.entries(sizes).map(([name, value]) => [name, name === 'sides' ? value : value * mm]);
  return made(definitionOf(solid), Object.fromEntries(lengths));
}

/** The solid; throws when its sizes are refused. */
export function made(definition: SolidDefinition, sizes: Sizes): Solid {
  const result = definition.make(sizes);
  if (!result.ok) throw new Error(`${definition.id}: ${JSON.stringify(result.issues)}`);
  return result.value;
}

/** Any lengths that a solid accepts between 3 and 200 mm, in eighths of a millimetre, in its own terms. */
function sizesFor(definition: SolidDefinition): fc.Arbitrary<Sizes> {
  const length = fc.integer({ min: 3 * 8, max: 200 * 8 }).map((eighths) => eighths / 8);
  const drawn = definition.fields.map(({ name, unit }) => {
    return [name, unit === 'count' ? fc.integer({ min: 3, max: 12 }) : length] as const;
  });
  return fc.record(Object.fromEntries(drawn)).filter((sizes) => definition.make(sizes).ok);
}
