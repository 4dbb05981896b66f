// Writes the JSON Schema of every format to packages/formats/schema. Run after a change of a schema, with the packages
// built: npx tsc -b && node packages/formats/scripts/write-schemas.mjs

import { writeFileSync } from 'node:fs';
import { FORMATS, jsonSchemaText } from '@cairnmark/formats';

for (const format of FORMATS) {
  writeFileSync(new URL(`../schema/${format}.json`, import.meta.url), jsonSchemaText(format));
}
