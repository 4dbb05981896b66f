// Turns the recipe of a solid into its entry of the catalogue: reads the sizes, builds the solid from them in the own
// frame, and puts it down on each of its sides.

import { success } from '../kernel/result.ts';
import type { Side } from './rest.ts';
import { restOn } from './rest.ts';
import type { Field, SizesOf } from './sizes.ts';
import { readSizes, waysOf } from './sizes.ts';
import type { SizeIssue, Sizes, Solid, SolidDefinition, SolidId } from './types.ts';
import { resultOf } from './working.ts';

/** A solid before it is named and put down. The first side is the usual way up. */
export interface Built extends Omit<Solid, 'id' | 'sizes' | 'volumeMm3' | 'surfaceMm2' | 'restings'> {
  readonly sides: readonly Side[];
}

export interface Recipe<Name extends string> {
  readonly id: SolidId;
  /** In the order in which they are asked; a way to give a size may use sizes that stand before it. */
  readonly fields: readonly Field<Name>[];
  /** Sizes as a kit would write them, lopsided so that no two can be mixed up unseen. */
  readonly example: Sizes;
  /** What the sizes must keep among themselves. */
  readonly rules?: (sizes: SizesOf<Name>) => readonly SizeIssue[];
  readonly build: (sizes: SizesOf<Name>) => Built;
}

/** The entry of the catalogue for `recipe`. */
export function defineSolid<Name extends string>(recipe: Recipe<Name>): SolidDefinition {
  const { id, fields, example, rules = () => [], build } = recipe;
  return {
    id,
    fields: fields.map(({ name, unit, ways }) => ({ name, unit, otherwise: Object.keys(ways) })),
    example,
    ways: (own) => waysOf(fields, own as SizesOf<Name>),
    make(given) {
      const read = readSizes(fields, rules, given);
      return read.ok ? success(finish(id, read.value, build(read.value))) : read;
    },
  };
}

function finish(id: SolidId, sizes: Sizes, { sides, ...built }: Built): Solid {
  const { volume, surface } = built.workings;
  return {
    id,
    sizes,
    volumeMm3: resultOf(volume, 'V'),
    surfaceMm2: resultOf(surface, 'S'),
    ...built,
    restings: sides.map((side) => restOn(side, built.body, built.centroids.full)),
  };
}
