// How far off each measure may be when every length was read on a ruler with divisions. A reading of resolution s has
// the standard uncertainty s / sqrt(12). A measure m of readings r1, r2 ... has u(m)^2 = sum of (dm/dr)^2 u^2: one
// reading used twice adds linearly, different readings in quadrature. Expanded by 2: about 95 %.
// Source: GUM (JCGM 100:2008) F.2.2.1, 5.1.2 eq. 10, 6.2; the slopes are differences of the measures themselves.

import { CONTACT_MM } from '../kernel/tolerance.ts';
import type { Build, PieceKinds } from './build.ts';
import { MEASURES } from './catalogue.ts';
import type { MeasureContext } from './context.ts';
import { contextOf } from './context.ts';
import type { Reading } from './readings.ts';
import { readingsOf } from './readings.ts';
import type { MeasureId, MeasureOptions } from './types.ts';

/** Coverage factor of the expanded uncertainty. */
const COVERAGE = 2;

/** Parts of an expanded uncertainty by reading, signed, in the unit of the measure; a reading that adds none is left out. */
export type Errors = Readonly<Record<string, number>>;

/** The errors of every measure that is not a count; none of one not measured. */
export function errorsOf(build: Build, kinds: PieceKinds, context: MeasureContext): ReadonlyMap<MeasureId, Errors> {
  const expandedMm = (COVERAGE * context.options.rulerStepMm) / Math.sqrt(12);
  const options = steadied(context.options);
  const readings = readingsOf(build, kinds, context).map((reading) => ({
    name: reading.id,
    slopes: slopesOf(endsOf(reading, build, options)),
  }));
  return new Map(
    MEASURED.map(({ id }, index) => {
      const parts = readings.map(({ name, slopes }) => [name, expandedMm * (slopes[index] ?? 0)] as const);
      return [id, Object.fromEntries(parts.filter(([, part]) => part !== 0))];
    }),
  );
}

/** The expanded uncertainty that follows: readings are independent, so their root sum square. */
export const toleranceOf = (errors: Errors): number => Math.hypot(...Object.values(errors));

const MEASURED = MEASURES.filter(({ unit }) => unit !== 'count');

/** How much each measure grows per mm of the reading; 0 for a reading that can be neither more nor less. */
function slopesOf(ends: Ends | null): readonly number[] {
  if (ends === null || ends.apartMm === 0) return [];
  return MEASURED.map(({ measure }) => {
    const [below, above] = [measure(ends.low), measure(ends.high)];
    return below.found && above.found ? (above.value - below.value) / ends.apartMm : 0;
  });
}

/** The build with one reading a little less and a little more, and by how much, mm. */
interface Ends {
  readonly low: MeasureContext;
  readonly high: MeasureContext;
  readonly apartMm: number;
}

/** Where the reading cannot be more, or less (a triangle at its limit), the build itself is that end. */
function endsOf({ nudged, nudgeMm }: Reading, build: Build, options: MeasureOptions): Ends | null {
  const [less, more] = [contextAt(nudged(-nudgeMm), options), contextAt(nudged(nudgeMm), options)];
  const [low, high] = [less ?? contextAt(build, options), more ?? contextAt(build, options)];
  if (low === null || high === null) return null;
  return { low, high, apartMm: (less === null ? 0 : nudgeMm) + (more === null ? 0 : nudgeMm) };
}

function contextAt(build: Build | null, options: MeasureOptions): MeasureContext | null {
  const context = build === null ? null : contextOf(build, options);
  return context?.ok ? context.value : null;
}

/**
 * The options for nudged builds: the allowance is wider by a contact, which is several nudges, so that a gap just as
 * wide as the allowance is closed before and after. Which gaps are closed must not jump while a slope is taken.
 */
function steadied(options: MeasureOptions): MeasureOptions {
  return { ...options, gapAllowanceMm: options.gapAllowanceMm + CONTACT_MM };
}
