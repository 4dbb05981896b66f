// The lengths of a build that somebody read on a ruler: each size of each kind used, the height of a traced build, and
// the edge of each traced outline. Each can be nudged, and gives the build as it would then have been measured. mm.

import { NUDGE_MM } from '../kernel/tolerance.ts';
import { CATALOGUE } from '../solids/catalogue.ts';
import type { SolidSpec } from '../solids/types.ts';
import type { Layout, TracedOutline } from '../stack/types.ts';
import type { Build, PieceKinds } from './build.ts';
import { kindsUsed } from './build.ts';
import type { MeasureContext } from './context.ts';
import { grownOutline } from './grown-outline.ts';
import { linksOf } from './in-touch.ts';
import { laidSizeReading, sizeId, withResized } from './size-reading.ts';

export interface Reading {
  /** `kind/size`, or `traced:height` and `traced:` with the index of an outline. */
  readonly id: string;
  /** How far to nudge it, mm: so little that what touches goes on touching and nothing else does. */
  readonly nudgeMm: number;
  /** The build as it would be, had this one reading come out larger by so much; null where no such solid can be. */
  readonly nudged: (byMm: number) => Build | null;
}

/** Every reading that the measures of the build may depend on. */
export function readingsOf(build: Build, kinds: PieceKinds, context: MeasureContext): readonly Reading[] {
  return [...sizeReadings(build, kinds, context), ...traceReadings(build)];
}

function sizeReadings(build: Build, kinds: PieceKinds, { stack }: MeasureContext): readonly Reading[] {
  const links = stack.shown ? linksOf(stack.value) : [];
  return kindsUsed(build.layout).flatMap((kind) => {
    const spec = kinds.get(kind);
    if (spec === undefined) return [];
    return lengthsOf(spec).map((name) => {
      const size = { kind, spec, name };
      return build.layout.kind === 'laid-out' && stack.shown
        ? laidSizeReading(build.layout, build.solids, stack.value, links, size)
        : plainReading(sizeId(size), (byMm) => withResized(build, size, byMm));
    });
  });
}

/** Names of the sizes that were read on a ruler: lengths, and not how many sides a prism has. */
function lengthsOf(spec: SolidSpec): readonly string[] {
  const fields = CATALOGUE[spec.solid].fields.filter(({ unit }) => unit === 'mm');
  const lengths = new Set(fields.flatMap(({ name, otherwise }) => [name, ...otherwise]));
  return Object.keys(spec.sizes).filter((size) => lengths.has(size));
}

function traceReadings({ layout, solids }: Build): readonly Reading[] {
  if (layout.kind !== 'traced') return [];
  const { outlines, heightMm } = layout;
  const as = (changed: Layout): Build => ({ layout: changed, solids });
  const edges = outlines.map((_, index) =>
    plainReading(`traced:${index}`, (byMm) => as({ ...layout, outlines: withGrown(outlines, index, byMm) })),
  );
  return heightMm === undefined
    ? edges
    : [...edges, plainReading('traced:height', (byMm) => as({ ...layout, heightMm: heightMm + byMm }))];
}

function withGrown(outlines: readonly TracedOutline[], index: number, byMm: number): readonly TracedOutline[] {
  return outlines.map((traced, at) =>
    at === index ? { ...traced, outline: grownOutline(traced.outline, byMm) } : traced,
  );
}

function plainReading(id: string, nudged: Reading['nudged']): Reading {
  return { id, nudgeMm: NUDGE_MM, nudged };
}
