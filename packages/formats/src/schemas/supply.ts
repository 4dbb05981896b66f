// The supply game of a challenge: its rule, the strokes of the groups' lists, and what a group has from them.

import type { Supply, SupplyEvent, SupplyRule } from '@cairnmark/scoring';
import * as z from 'zod/mini';
import { COUNT_MOST, SECONDS_MOST, STROKES_MOST } from '../limits.ts';
import { DROPS, HAND_OVERS } from '../names.ts';
import { between, byId, id, name, points, text, wholeBetween } from './fields.ts';
import { listOf } from './list.ts';

const count = wholeBetween(1, COUNT_MOST);

export const supplyRule: z.ZodMiniType<SupplyRule> = z.strictObject({
  ends: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('time'), seconds: between(1, SECONDS_MOST) }),
    z.strictObject({ kind: z.literal('turns'), turns: count }),
    z.strictObject({ kind: z.literal('stock-empty') }),
  ]),
  handOver: z.enum(HAND_OVERS),
  dropped: z.enum(DROPS),
});

const stroke: z.ZodMiniType<SupplyEvent> = z.strictObject({
  id,
  group: id,
  what: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('earned'), piece: id, count }),
    z.strictObject({ kind: z.literal('lost'), piece: id, count, reason: text }),
    z.strictObject({ kind: z.literal('returned'), piece: id, count }),
    z.strictObject({ kind: z.literal('dropped'), piece: id, count }),
    z.strictObject({ kind: z.literal('penalty'), points, reason: text }),
  ]),
  round: z.exactOptional(count),
  carrier: z.exactOptional(name),
  takenBack: z.exactOptional(z.boolean()),
});

/** By challenge id. */
export const supplies = byId(listOf(stroke, STROKES_MOST));

/** As many as all strokes together can add up to. */
const pieces = wholeBetween(0, STROKES_MOST * COUNT_MOST);

export const supply: z.ZodMiniType<Supply> = z.strictObject({
  group: id,
  pieces: byId(pieces),
  dropped: pieces,
  lost: pieces,
  penaltyPoints: z.number(),
  byRound: listOf(z.strictObject({ round: count, pieces }), COUNT_MOST),
  byCarrier: listOf(z.strictObject({ carrier: name, pieces }), COUNT_MOST),
});
