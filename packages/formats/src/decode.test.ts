import { describe, expect, it } from 'vitest';
import { decode } from './decode.ts';
import { encode } from './encode.ts';
import { FILE_CHARACTERS_MOST, ISSUES_TOLD_MOST } from './limits.ts';

const KIT = { format: 'cairnmark/kit', version: 1, id: 'box', name: 'Box', kinds: [] };
/** Hundreds of attempts with this layout. */
const classWith = (layout: object) =>
  JSON.stringify({ format: 'cairnmark/class', version: 1, attempts: Array(400).fill({ layout }) });
const issuesOf = (text: string) => {
  const decoded = decode(text);
  return decoded.ok ? [] : decoded.issues;
};

describe('decode', () => {
  it('gives the record with its format', () => {
    expect(decode(JSON.stringify(KIT))).toEqual({
      ok: true,
      value: { format: 'kit', value: { id: 'box', name: 'Box', kinds: [], frictions: [] } },
    });
  });

  it('tells a file of another format than the one asked for', () => {
    expect(decode(JSON.stringify(KIT), 'class')).toEqual({
      ok: false,
      issues: [{ code: 'format-other', path: ['format'], details: { expected: 'class', received: 'kit' } }],
    });
  });

  it('reads past a mark of the byte order', () => {
    expect(decode(`\uFEFF${JSON.stringify(KIT)}`).ok).toBe(true);
  });

  it('names what is allowed and what was met', () => {
    expect(issuesOf(JSON.stringify({ ...KIT, format: 'cairnmark/box' }))).toEqual([
      {
        code: 'format-unknown',
        path: ['format'],
        details: { format: 'box', allowed: 'kit, challenge, attempt, class, report' },
      },
    ]);
    expect(issuesOf(JSON.stringify({ ...KIT, version: 7 }))).toEqual([
      { code: 'version-newer', path: ['version'], details: { version: 7, newest: 3 } },
    ]);
    expect(issuesOf(JSON.stringify({ ...KIT, name: null, kinds: 'none' }))).toEqual([
      { code: 'wrong-type', path: ['name'], details: { expected: 'string', received: 'null' } },
      { code: 'wrong-type', path: ['kinds'], details: { expected: 'array', received: 'string' } },
    ]);
  });

  it('cuts a long list of faults off and tells that there are more', () => {
    const kinds = Array.from({ length: 90 }, () => ({}));
    // A kind has six keys, and every one of them is missing.
    const issues = issuesOf(JSON.stringify({ ...KIT, kinds }));
    expect(issues).toHaveLength(ISSUES_TOLD_MOST + 1);
    expect(issues.at(-1)).toEqual({ code: 'more-issues', path: [], details: { told: ISSUES_TOLD_MOST } });
  });
});

describe('a file made to make the program stall', () => {
  // Each is refused within a few seconds on a slow machine; without its limit each takes minutes or all the memory.
  const SECONDS = 10;

  it.each([
    ['larger than any file', ' '.repeat(FILE_CHARACTERS_MOST + 1), 'file-too-large'],
    ['a list of millions of zeros', `{"kinds":[${'0,'.repeat(5_000_000)}0]}`, 'too-many-values'],
    ['millions of opened brackets', '['.repeat(15_000_000), 'too-deep'],
    ['an id of millions of letters', JSON.stringify({ ...KIT, id: 'k'.repeat(15_000_000) }), 'too-long'],
    ['one long text', JSON.stringify({ ...KIT, name: 'k'.repeat(15_000_000) }), 'too-long'],
    [
      'a list far beyond its limit',
      JSON.stringify({ ...KIT, kinds: Array.from({ length: 1_000_000 }, () => 0) }),
      'too-many',
    ],
    [
      'a list of lists of wrong values',
      classWith({ kind: 'numbers-only', pieces: Array(4_900).fill(0) }),
      'more-issues',
    ],
    [
      'a list of lists of things without keys',
      classWith({ kind: 'laid-out', pieces: Array(400).fill({}) }),
      'more-issues',
    ],
    ['a key of millions of letters', JSON.stringify({ ...KIT, ['k'.repeat(15_000_000)]: 1 }), 'unknown-key'],
  ])(
    '%s',
    (_what, text, code) => {
      expect(issuesOf(text).at(-1)?.code).toBe(code);
    },
    SECONDS * 1000,
  );
});

describe('encode', () => {
  it('writes two blanks a level, the format first, and a line end at the end', () => {
    expect(encode('kit', { frictions: [], kinds: [], name: 'Box', id: 'box' })).toBe(
      '{\n  "format": "cairnmark/kit",\n  "version": 3,\n  "id": "box",\n  "name": "Box",\n  "kinds": [],\n  "frictions": []\n}\n',
    );
  });

  it('throws for a record that could not be read back', () => {
    expect(() => encode('kit', { id: 'box', name: '', kinds: [], frictions: [] })).toThrow(RangeError);
  });
});
