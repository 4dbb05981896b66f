// Every broken file of the corpus is refused with exactly the faults that are listed for it.

import { readdirSync, readFileSync } from 'node:fs';
import { scoreClass } from '@cairnmark/engine';
import type { Issue } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { STATICS } from '../../../tests/reference/small-class.ts';
import { decode } from './decode.ts';

interface Expected {
  /** `decode` refuses the file; or it is sound as a file, and the engine refuses the build that it lays out. */
  readonly foundBy: 'decode' | 'engine';
  readonly issues: readonly Pick<Issue, 'code' | 'path'>[];
}

const FOLDER = new URL('../../../tests/corpus/broken/', import.meta.url);
const LIST = 'expected.json';

const read = (file: string) => readFileSync(new URL(file, FOLDER), 'utf8');
const expected: Readonly<Record<string, Expected>> = JSON.parse(read(LIST));
const files = readdirSync(FOLDER).filter((file) => file !== LIST);

describe('broken files', () => {
  it('are all listed, and every listed one is there', () => {
    expect(files.sort()).toEqual(Object.keys(expected).sort());
  });

  it.each(Object.entries(expected))('%s is refused for what it is', (file, { foundBy, issues }) => {
    const decoded = decode(read(file));
    expect(decoded.ok).toBe(foundBy === 'engine');
    const refused = decoded.ok ? engineIssues(decoded.value) : decoded.issues;
    expect(refused.map(({ code, path }) => ({ code, path }))).toEqual(issues);
  });
});

function engineIssues({ format, value }: Extract<ReturnType<typeof decode>, { ok: true }>['value']): readonly Issue[] {
  if (format !== 'class') throw new RangeError(`the engine scores no ${format}`);
  const scored = scoreClass(value, STATICS);
  return scored.ok ? [] : scored.issues;
}
