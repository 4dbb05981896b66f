import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freshSeed, share } from '../../../tests/tools/share.ts';
import { readJson } from './json.ts';
import { DEPTH_MOST, KEYS_MOST, VALUES_MOST } from './limits.ts';

const issuesOf = (text: string) => {
  const read = readJson(text);
  return read.ok ? [] : read.issues;
};
const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

/** What a text is spoiled with. */
const MARKS = ['', '"', '\\', ',', ':', '}', ']', '[', '{', '0', '-', 'e', '.', '\n', '\u0001', 'tru', '\\u12'];

describe('readJson', () => {
  const seed = freshSeed('readJson');
  const numRuns = share(100_000, 2_000);

  it(`takes as JSON what JSON.parse takes, whole or spoiled at one place (seed ${seed})`, () => {
    const spoiled = fc.tuple(fc.json({ maxDepth: 4 }), fc.nat(), fc.constantFrom(...MARKS)).map(([text, at, mark]) => {
      const place = at % (text.length + 1);
      // An empty mark takes a character out instead.
      return text.slice(0, place) + mark + text.slice(mark === '' ? place + 1 : place);
    });
    fc.assert(
      fc.property(fc.oneof(fc.json(), spoiled), (text) => {
        expect(issuesOf(text).some(({ code }) => code === 'not-json')).toBe(!isJson(text));
      }),
      { seed, numRuns },
    );
  });

  it(`gives the value that JSON.parse gives (seed ${seed})`, () => {
    const value = fc.jsonValue().filter((v) => !JSON.stringify(v).includes('__proto__'));
    fc.assert(
      fc.property(value, (v) => {
        const text = JSON.stringify(v);
        expect(readJson(text)).toEqual({ ok: true, value: JSON.parse(text) });
      }),
      { seed, numRuns: share(10_000, 500) },
    );
  });

  it.each([
    ['', 1, 1],
    ['{"a": 1,}', 1, 9],
    ['{\n  "a": 1\n  "b": 2\n}', 3, 3],
    ['[1, 2, tru]', 1, 8],
    ["{'a': 1}", 1, 2],
    ['[1] 2', 1, 5],
    ['["line\nbreak"]', 1, 7],
    ['{"a": NaN}', 1, 7],
    ['{"a": 01}', 1, 8],
    ['["no end', 1, 9],
  ])('tells line and column of the first fault of %j', (text, line, column) => {
    expect(issuesOf(text)).toEqual([{ code: 'not-json', path: [], details: { line, column } }]);
  });

  it('tells every key that is written twice, however it is written', () => {
    const text = '{"a": 1, "list": [{}, {"b": 2, "\\u0062": 3}], "a": 4}';
    expect(issuesOf(text)).toEqual([
      { code: 'duplicate-key', path: ['list', 1, 'b'], details: {} },
      { code: 'duplicate-key', path: ['a'], details: {} },
    ]);
  });

  it('lets the same key stand in two objects', () => {
    expect(readJson('[{"a": 1}, {"a": 2}, {"b": {"a": 3}, "a": 4}]').ok).toBe(true);
  });

  it.each(['__proto__', '\\u005f_proto__'])('refuses the key %s and leaves every object as it is', (key) => {
    expect(issuesOf(`{"a": {"${key}": {"polluted": 1}}}`)).toEqual([
      { code: 'unknown-key', path: ['a', '__proto__'], details: {} },
    ]);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });

  it('reads as many keys of an object as the limit and no more', () => {
    const keys = (count: number) =>
      JSON.stringify({ a: Object.fromEntries(Array.from({ length: count }, (_, k) => [`k${k}`, 7])) });
    expect(readJson(keys(KEYS_MOST)).ok).toBe(true);
    expect(issuesOf(keys(30_000))).toEqual([
      { code: 'too-many-keys', path: ['a', `k${KEYS_MOST}`], details: { most: KEYS_MOST } },
    ]);
  });

  it('goes as deep as the limit and no deeper', () => {
    const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);
    expect(readJson(nested(DEPTH_MOST)).ok).toBe(true);
    expect(issuesOf(nested(1_000_000)).map(({ code }) => code)).toEqual(['too-deep']);
  });

  it('reads as many values as the limit and no more', () => {
    const zeros = (count: number) => `[${'0,'.repeat(count - 1)}0]`;
    expect(readJson(zeros(VALUES_MOST - 1)).ok).toBe(true);
    expect(issuesOf(zeros(VALUES_MOST)).map(({ code }) => code)).toEqual(['too-many-values']);
  });
});
