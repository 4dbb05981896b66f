// JSON Schema (draft 2020-12) of each format, for other programs and for editors that help while typing. It tells the
// shape of a file; what its values must say together is looked at by `decode` alone.

import * as z from 'zod/mini';
import { MARK } from './codec.ts';
import type { Format } from './formats.ts';
import { CODECS } from './formats.ts';
import { attempt, decision } from './schemas/attempt.ts';
import { challenge } from './schemas/challenge.ts';
import { expr, fact, step } from './schemas/facts.ts';
import { id, instant, name, text } from './schemas/fields.ts';
import { kit, sizes } from './schemas/kit.ts';
import { layout } from './schemas/layout.ts';
import { presentVersion, STEPS } from './steps.ts';

/** The schema of files of `format` in their present version. */
export function jsonSchemaOf(format: Format): Readonly<Record<string, unknown>> {
  const made = z.toJSONSchema(CODECS[format].schema, { metadata: namedParts(format) });
  const { $schema, type, properties, required, ...rest } = made;
  return {
    $schema,
    title: MARK + format,
    type,
    properties: {
      format: { const: MARK + format },
      version: { const: presentVersion(format, STEPS) },
      ...properties,
    },
    required: ['format', 'version', ...(required ?? [])],
    ...rest,
  };
}

/** The same as the text of a file. */
export const jsonSchemaText = (format: Format): string => `${JSON.stringify(jsonSchemaOf(format), null, 2)}\n`;

/** The parts that a schema names once and refers to; the record itself is not one of its own parts. */
function namedParts(format: Format) {
  const parts = z.registry<{ id: string }>();
  const named = { id, name, text, instant, sizes, layout, decision, fact, step, expr, kit, challenge, attempt };
  for (const [part, schema] of Object.entries(named)) if (part !== format) parts.add(schema, { id: part });
  return parts;
}
