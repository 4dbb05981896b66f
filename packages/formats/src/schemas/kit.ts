// A kit: the kinds of piece that a class has. Sizes mm, paper g/m2, density g/cm3.

import type { Kit } from '@cairnmark/engine';
import * as z from 'zod/mini';
import {
  DENSITY_G_PER_CM3_LEAST,
  DENSITY_G_PER_CM3_MOST,
  FRICTION_MOST,
  FRICTIONS_MOST,
  KINDS_MOST,
  NAME_CHARACTERS_MOST,
  PAPER_G_PER_M2_LEAST,
  PAPER_G_PER_M2_MOST,
  PIECES_MOST,
} from '../limits.ts';
import { SOLID_IDS } from '../names.ts';
import { between, byName, id, name, wholeBetween } from './fields.ts';
import { listOf } from './list.ts';

/** Sizes by name. Which names a solid has, and how large they may be, the solid itself says. */
export const sizes = byName(z.string().check(z.maxLength(NAME_CHARACTERS_MOST)), z.number());

const material = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('folded-paper'),
    gramsPerM2: between(PAPER_G_PER_M2_LEAST, PAPER_G_PER_M2_MOST),
    base: z.enum(['closed', 'open']),
    printedNet: z.boolean(),
  }),
  z.strictObject({
    kind: z.literal('full'),
    densityGPerCm3: between(DENSITY_G_PER_CM3_LEAST, DENSITY_G_PER_CM3_MOST),
  }),
]);

const friction = between(0, FRICTION_MOST);

const kindOfPiece = z.strictObject({
  id,
  name,
  solid: z.strictObject({ solid: z.enum(SOLID_IDS), sizes }),
  stock: wholeBetween(0, PIECES_MOST),
  crushed: z.exactOptional(wholeBetween(0, PIECES_MOST)),
  material,
  surface: name,
  friction,
});

const pairFriction = z.strictObject({ between: z.tuple([name, name]), friction });

export const kit: z.ZodMiniType<Kit> = z.strictObject({
  id,
  name,
  kinds: listOf(kindOfPiece, KINDS_MOST),
  frictions: listOf(pairFriction, FRICTIONS_MOST),
});
