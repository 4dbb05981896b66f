// The other ways in which people measure a size: across or around in place of the radius, along a slope in place of the
// height. Which there are, the solid says. Lengths mm. `own`: the sizes of a solid in its own terms.

import type { SizeField, Sizes, SizeWay, SolidSpec } from '@cairnmark/geometry';
import { definitionOf, makeSolid } from '@cairnmark/geometry';

/** [] where there are none, or the sizes make no solid. */
export function waysOf(spec: SolidSpec): readonly SizeWay[] {
  const made = makeSolid(spec);
  return made.ok ? definitionOf(spec.solid).ways(made.value.sizes) : [];
}

/** What a ruler or a string shows along that way. */
export function shownBy(way: SizeWay, own: Sizes): number {
  const size = own[way.of] ?? Number.NaN;
  return way.kind === 'factor' ? size / way.times : Math.hypot(size, way.runMm);
}

/** The name under which a size is written: its own, or another way. */
export const writtenName = ({ name, otherwise }: SizeField, sizes: Sizes): string =>
  [name, ...otherwise].find((one) => sizes[one] !== undefined) ?? name;

/** The sizes as they were written, with one of them measured anew by another way. A slope too short gives NaN. */
export function measuredBy(spec: SolidSpec, way: SizeWay, valueMm: number): Sizes {
  const made = makeSolid(spec);
  const field = definitionOf(spec.solid).fields.find(({ name }) => name === way.of);
  if (!made.ok || field === undefined) return spec.sizes;
  const written = writtenName(field, spec.sizes);
  if (written === way.name) return { ...spec.sizes, [written]: valueMm };
  const own = { ...made.value.sizes, [way.of]: sizeBy(spec, way, valueMm) };
  const back = waysOf(spec).find(({ name }) => name === written);
  return { ...spec.sizes, [written]: back === undefined ? (own[way.of] ?? Number.NaN) : shownBy(back, own) };
}

/** The size in the solid's own terms, as the solid reads it; NaN for a measurement that it does not take. */
export function sizeBy({ solid, sizes }: SolidSpec, way: SizeWay, valueMm: number): number {
  const made = makeSolid({ solid, sizes });
  if (!made.ok) return Number.NaN;
  const { [way.of]: _, ...others } = made.value.sizes;
  const read = makeSolid({ solid, sizes: { ...others, [way.name]: valueMm } });
  return (read.ok ? read.value.sizes[way.of] : undefined) ?? Number.NaN;
}
