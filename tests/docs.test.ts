// Runs the examples of the documents and compares what they print with what the document shows.

import { describe, expect, it } from 'vitest';
import { examplesIn, likeShown, runExample } from './tools/doc-examples.ts';
import { listFiles, ROOT, readText } from './tools/files.ts';

const documents = listFiles(ROOT).filter((path) => path.endsWith('.md'));
const examples = documents.flatMap((path) =>
  examplesIn(readText(ROOT, path)).map((example) => ({ ...example, where: `${path}:${example.line}` })),
);

describe('an example prints what its document shows', () => {
  it.each(examples)('$where', ({ script, printed }) => {
    expect(likeShown(runExample(script, ROOT), printed)).toBe(printed);
  });
});
