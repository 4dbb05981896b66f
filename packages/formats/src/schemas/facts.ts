// Facts of a build with their workings, as a report holds them. Values in the unit that stands beside them.

import type { Expr, Fact, Step } from '@cairnmark/geometry';
import * as z from 'zod/mini';
import { NAME_CHARACTERS_MOST, PIECES_MOST, ROWS_MOST, WORKING_LINES_MOST } from '../limits.ts';
import { MEASURE_IDS, NOT_MEASURED_REASONS, UNITS, WORKING_METHODS } from '../names.ts';
import { byName, id, wholeBetween } from './fields.ts';
import { listOf } from './list.ts';

const symbol = z.string().check(z.minLength(1), z.maxLength(NAME_CHARACTERS_MOST));
export const unit = z.enum(UNITS);
/** Parts of a tolerance by the reading they come from: `kind/size`. */
export const errors = byName(z.string().check(z.minLength(1), z.maxLength(2 * NAME_CHARACTERS_MOST)), z.number());
/** An uncertainty is never negative. */
export const tolerance = z.number().check(z.gte(0));

export const expr: z.ZodMiniType<Expr> = z.lazy(() =>
  z.discriminatedUnion('op', [
    z.strictObject({ op: z.literal('number'), value: z.number() }),
    z.strictObject({ op: z.literal('pi') }),
    z.strictObject({ op: z.literal('symbol'), name: symbol }),
    z.strictObject({ op: z.literal('sum'), terms: listOf(expr, ROWS_MOST) }),
    z.strictObject({ op: z.literal('product'), terms: listOf(expr, ROWS_MOST) }),
    z.strictObject({ op: z.literal('difference'), from: expr, less: expr }),
    z.strictObject({ op: z.literal('fraction'), over: expr, under: expr }),
    z.strictObject({ op: z.literal('power'), base: expr, exponent: z.literal([2, 3]) }),
    z.strictObject({ op: z.literal('root'), of: expr }),
    z.strictObject({ op: z.literal(['sin', 'cos', 'tan']), of: expr }),
  ]),
);

const quantity = z.strictObject({ value: z.number(), unit });

export const step: z.ZodMiniType<Step> = z.strictObject({
  symbol,
  formula: expr,
  inputs: byName(symbol, quantity),
  result: quantity,
});

const steps = listOf(step, WORKING_LINES_MOST);

const working = z.strictObject({
  method: z.enum(WORKING_METHODS),
  steps,
  parts: listOf(
    z.strictObject({ kind: id, times: wholeBetween(0, PIECES_MOST), each: z.number(), unit, steps }),
    WORKING_LINES_MOST,
  ),
});

export const fact: z.ZodMiniType<Fact> = z.discriminatedUnion('status', [
  z.strictObject({
    status: z.literal('measured'),
    id: z.enum(MEASURE_IDS),
    value: z.number(),
    unit,
    tolerance,
    errors,
    working,
  }),
  z.strictObject({
    status: z.literal('not-measured'),
    id: z.enum(MEASURE_IDS),
    unit,
    reason: z.enum(NOT_MEASURED_REASONS),
  }),
]);
