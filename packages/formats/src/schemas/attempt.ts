// An attempt: what one group built, with what people observed, judged and decided.

import type { Attempt } from '@cairnmark/engine';
import * as z from 'zod/mini';
import { MARK_MOST, NOTES_MOST } from '../limits.ts';
import { MEASURE_IDS } from '../names.ts';
import { between, byId, id, instant, lengthMm, measure, measured, name, points, seconds, text } from './fields.ts';
import { layout } from './layout.ts';
import { listOf } from './list.ts';

export const attemptState = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('stood') }),
  z.strictObject({ kind: z.literal('fell-before-measuring') }),
  z.strictObject({ kind: z.literal('fell'), afterSeconds: seconds }),
  z.strictObject({ kind: z.literal('not-taking-part') }),
  z.strictObject({ kind: z.literal('absent') }),
]);

export const decision = z.strictObject({
  measure,
  value: measured,
  by: name,
  reason: text,
  at: instant,
  takenBack: z.exactOptional(z.strictObject({ at: instant, reason: text })),
});

export const adjustment = z.strictObject({ points, by: name, reason: text, at: instant });

export const attempt: z.ZodMiniType<Attempt> = z.strictObject({
  id,
  group: id,
  challenge: id,
  at: instant,
  state: attemptState,
  // An absent group has none: it may be left out.
  layout: z._default(layout, { kind: 'numbers-only', pieces: [] }),
  observed: z.strictObject({
    heightReadingsMm: listOf(lengthMm, NOTES_MOST),
    photoHeightMm: z.exactOptional(lengthMm),
    stoodSeconds: z.exactOptional(seconds),
  }),
  judged: listOf(z.strictObject({ judge: name, criterion: id, mark: between(0, MARK_MOST) }), NOTES_MOST),
  answers: byId(z.strictObject({ kept: z.boolean(), note: z.exactOptional(text) })),
  own: listOf(z.strictObject({ measure: z.enum(MEASURE_IDS), value: measured }), NOTES_MOST),
  decisions: listOf(decision, NOTES_MOST),
  adjustments: listOf(adjustment, NOTES_MOST),
  confirmedBy: z.nullable(name),
  chosen: z.boolean(),
});
