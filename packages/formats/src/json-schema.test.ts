import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FORMATS } from './formats.ts';
import { jsonSchemaOf, jsonSchemaText } from './json-schema.ts';

const kept = (format: string) => readFileSync(new URL(`../schema/${format}.json`, import.meta.url), 'utf8');

describe('JSON Schema', () => {
  it.each(FORMATS)('of %s is kept as it is today (else run scripts/write-schemas.mjs)', (format) => {
    expect(kept(format)).toBe(jsonSchemaText(format));
  });

  it('asks for the two outermost keys and lets no unknown key pass', () => {
    expect(jsonSchemaOf('kit')).toMatchObject({
      properties: { format: { const: 'cairnmark/kit' }, version: { const: 3 }, kinds: { maxItems: 100 } },
      required: ['format', 'version', 'id', 'name', 'kinds', 'frictions'],
      additionalProperties: false,
    });
  });
});
