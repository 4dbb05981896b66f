import { describe, expect, it } from 'vitest';
import { openEnvelope } from './envelope.ts';
import { FORMATS } from './formats.ts';
import type { Step } from './steps.ts';
import { bringUp, presentVersion, STEPS } from './steps.ts';

/** Invented steps, written down in the wrong order and mixed with those of another format. */
const INVENTED: readonly Step[] = [
  { format: 'kit', from: 2, name: 'stock-becomes-count', up: ({ stock, ...rest }) => ({ ...rest, count: stock }) },
  { format: 'class', from: 1, name: 'has-a-day', up: (content) => ({ ...content, day: 7 }) },
  {
    format: 'kit',
    from: 1,
    name: 'stock-in-dozens',
    up: (content) => ({ ...content, stock: 12 * Number(content['stock']) }),
  },
];

describe('steps from older versions', () => {
  it('lead kits to version 3, attempts and reports to 4, challenges to 5, classes to 6', () => {
    expect(FORMATS.map((format) => presentVersion(format, STEPS))).toEqual([3, 5, 4, 6, 4]);
  });

  it('leave what is not in its place for the schema to refuse, and drop no key', () => {
    const odd = { kit: [], challenges: 'none', kinds: [7, { surface: 3 }], frictions: 'some', more: true };
    for (const format of FORMATS) expect(bringUp(format, 1, odd, STEPS)).toMatchObject(odd);
  });

  it('say the present version of each format', () => {
    expect(presentVersion('kit', INVENTED)).toBe(3);
    expect(presentVersion('class', INVENTED)).toBe(2);
    expect(presentVersion('report', INVENTED)).toBe(1);
  });

  it.each([
    [1, { id: 'box', count: 84 }],
    [2, { id: 'box', count: 7 }],
    [3, { id: 'box', stock: 7 }],
  ])('are taken from version %i on, in order', (version, expected) => {
    const old = Object.freeze({ id: 'box', stock: 7 });
    expect(bringUp('kit', version, old, INVENTED)).toEqual(expected);
  });

  it('are taken when a file is opened', () => {
    const file = { format: 'cairnmark/kit', version: 1, id: 'box', stock: 5 };
    expect(openEnvelope(file, undefined, INVENTED)).toEqual({
      ok: true,
      value: { format: 'kit', content: { id: 'box', count: 60 } },
    });
  });

  it('do not reach beyond the present version', () => {
    const file = { format: 'cairnmark/kit', version: 4 };
    expect(openEnvelope(file, undefined, INVENTED)).toEqual({
      ok: false,
      issues: [{ code: 'version-newer', path: ['version'], details: { version: 4, newest: 3 } }],
    });
  });
});
