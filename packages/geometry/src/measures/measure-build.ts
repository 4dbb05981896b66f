// All facts of a build: every measure of the catalogue, with working and tolerance, or with the reason why the layout
// does not show it. mm, mm2, mm3, counts.

import type { Result } from '../kernel/result.ts';
import { success } from '../kernel/result.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import { length2, sub2 } from '../kernel/vec.ts';
import type { Layout } from '../stack/types.ts';
import type { MeasureIssue, PieceKinds } from './build.ts';
import { buildOf } from './build.ts';
import { MEASURES } from './catalogue.ts';
import type { MeasureContext } from './context.ts';
import { contextOf } from './context.ts';
import type { MeasureDefinition } from './measure.ts';
import type { Errors } from './tolerances.ts';
import { errorsOf, toleranceOf } from './tolerances.ts';
import type { BuildMeasures, Fact, GapPlace, MeasureOptions } from './types.ts';

/**
 * Measures a build: one fact for each entry of the catalogue, in its order, and the gaps that were counted as closed.
 * `kinds` holds the sizes as the group read them; each reading has the resolution of the ruler, from which the
 * tolerances follow. Refused with every issue found when a kind is unknown, sizes are impossible, or pieces overlap.
 */
export function measureBuild(
  layout: Layout,
  kinds: PieceKinds,
  options: MeasureOptions,
): Result<BuildMeasures, MeasureIssue> {
  const build = buildOf(layout, kinds);
  if (!build.ok) return build;
  const context = contextOf(build.value, options);
  if (!context.ok) return context;
  const errors = errorsOf(build.value, kinds, context.value);
  const facts = MEASURES.map((definition) => factOf(definition, context.value, errors.get(definition.id) ?? {}));
  return success({ facts, gaps: gapsOf(context.value) });
}

function factOf({ id, unit, measure }: MeasureDefinition, context: MeasureContext, errors: Errors): Fact {
  const finding = measure(context);
  return finding.found
    ? {
        status: 'measured',
        id,
        value: finding.value,
        unit,
        tolerance: toleranceOf(errors),
        errors,
        working: finding.working,
      }
    : { status: 'not-measured', id, unit, reason: finding.reason };
}

/** The gaps closed in the footprint, and those closed in the base that a piece above hides. */
function gapsOf({ footprint, base }: MeasureContext): readonly GapPlace[] {
  const above = footprint.shown ? footprint.value.gaps : [];
  const below = base.shown ? base.value.gaps : [];
  const isNew = (gap: GapPlace): boolean => above.every((seen) => length2(sub2(seen.at, gap.at)) > CONTACT_MM);
  return [...above, ...below.filter(isNew)];
}
