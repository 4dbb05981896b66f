// The other ways in which people measure a size: across or around in place of the radius, along a slope in place of the
// height. Lengths mm. `own`: the sizes of a solid in its own terms. A slope is the long side of a right triangle: the height
// stands, and the slope reaches over `run` of the base. In-radius and circumradius of a regular polygon: school geometry.

import type { SizeField, Sizes, SolidId, SolidSpec } from '@cairnmark/geometry';
import { definitionOf, makeSolid } from '@cairnmark/geometry';

export type SlopeName = 'slant' | 'slantLength' | 'slantWidth' | 'slantEdge';
type FactorName = 'diameter' | 'circumference' | 'topDiameter' | 'topCircumference' | 'topWidth';

export type Way =
  | { readonly kind: 'slope'; readonly name: SlopeName; readonly of: 'height'; readonly runMm: number }
  | { readonly kind: 'factor'; readonly name: FactorName; readonly of: string; readonly times: number };

/** Ways other than those that the solid's own terms name. [] where there are none, or the sizes make no solid. */
export function waysOf(spec: SolidSpec): readonly Way[] {
  const made = makeSolid(spec);
  return made.ok ? [...factorsOf(spec.solid, made.value.sizes), ...slopesOf(spec.solid, made.value.sizes)] : [];
}

/** What a ruler or a string shows along that way. */
export function shownBy(way: Way, own: Sizes): number {
  const size = own[way.of] ?? Number.NaN;
  return way.kind === 'factor' ? size * way.times : Math.hypot(size, way.runMm);
}

/** The size in the solid's own terms; NaN for a slope that is too short to reach over its run. */
export function sizeBy(way: Way, valueMm: number): number {
  return way.kind === 'factor' ? valueMm / way.times : Math.sqrt((valueMm - way.runMm) * (valueMm + way.runMm));
}

/** The name under which a size is written: its own, or another way. */
export const writtenName = ({ name, otherwise }: SizeField, sizes: Sizes): string =>
  [name, ...otherwise].find((one) => sizes[one] !== undefined) ?? name;

/** The sizes as they were written, with one of them measured anew by another way. */
export function measuredBy(spec: SolidSpec, way: Way, valueMm: number): Sizes {
  const made = makeSolid(spec);
  const field = definitionOf(spec.solid).fields.find(({ name }) => name === way.of);
  if (!made.ok || field === undefined) return spec.sizes;
  const written = writtenName(field, spec.sizes);
  if (written === way.name) return { ...spec.sizes, [written]: valueMm };
  const own = { ...made.value.sizes, [way.of]: sizeBy(way, valueMm) };
  const back = waysOf(spec).find(({ name }) => name === written);
  return { ...spec.sizes, [written]: back === undefined ? (own[way.of] ?? Number.NaN) : shownBy(back, own) };
}

function factorsOf(solid: SolidId, own: Sizes): readonly Way[] {
  const round = (of: string, across: FactorName, around: FactorName): readonly Way[] => [
    { kind: 'factor', name: across, of, times: 2 },
    { kind: 'factor', name: around, of, times: 2 * Math.PI },
  ];
  return [
    ...(own['radius'] === undefined ? [] : round('radius', 'diameter', 'circumference')),
    ...(own['topRadius'] === undefined ? [] : round('topRadius', 'topDiameter', 'topCircumference')),
    ...(solid === 'rectangular-frustum'
      ? [
          {
            kind: 'factor',
            name: 'topWidth',
            of: 'topLength',
            times: size(own, 'width') / size(own, 'length'),
          } as const,
        ]
      : []),
  ];
}

function slopesOf(solid: SolidId, own: Sizes): readonly Way[] {
  const runs = RUNS[solid]?.(own) ?? {};
  return SLOPES.flatMap((name): readonly Way[] => {
    const runMm = runs[name];
    return runMm === undefined ? [] : [{ kind: 'slope', name, of: 'height', runMm }];
  });
}

const SLOPES: readonly SlopeName[] = ['slant', 'slantLength', 'slantWidth', 'slantEdge'];

type Runs = Partial<Readonly<Record<SlopeName, number>>>;

/** How far each slope reaches towards the middle, seen from above. */
const RUNS: Readonly<Partial<Record<SolidId, (own: Sizes) => Runs>>> = {
  cone: (own) => ({ slant: size(own, 'radius') }),
  'cone-frustum': (own) => ({ slant: size(own, 'radius') - size(own, 'topRadius') }),
  'regular-pyramid': (own) => overPolygon(own, size(own, 'edge')),
  'regular-frustum': (own) => overPolygon(own, size(own, 'edge') - size(own, 'topEdge')),
  'rectangular-pyramid': (own) => overRectangle(size(own, 'length'), size(own, 'width')),
  'rectangular-frustum': (own) => {
    const cut = 1 - size(own, 'topLength') / size(own, 'length');
    return overRectangle(size(own, 'length') * cut, size(own, 'width') * cut);
  },
};

function overPolygon(own: Sizes, edgeMm: number): Runs {
  const halfAngleRad = Math.PI / size(own, 'sides');
  return { slant: edgeMm / (2 * Math.tan(halfAngleRad)), slantEdge: edgeMm / (2 * Math.sin(halfAngleRad)) };
}

const overRectangle = (lengthMm: number, widthMm: number): Runs => ({
  slantLength: widthMm / 2,
  slantWidth: lengthMm / 2,
  slantEdge: Math.hypot(lengthMm, widthMm) / 2,
});

const size = (own: Sizes, name: string): number => own[name] ?? Number.NaN;
