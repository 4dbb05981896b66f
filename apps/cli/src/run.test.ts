import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { demoText } from '@cairnmark/demo';
import { encode } from '@cairnmark/formats';
import { CATALOGUE } from '@cairnmark/geometry';
import { wordsFor } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { attempt, classOf, numbersOnly } from '../../../tests/reference/small-class.ts';
import { tried } from './tried.ts';

const CORPUS = fileURLToPath(new URL('../../../tests/corpus/', import.meta.url));

describe('help', () => {
  it('is given for everything, in both languages', async () => {
    for (const name of ['', 'score', 'measure', 'why', 'ready', 'favour', 'even', 'best', 'print', 'solids', 'check']) {
      const [en, es] = [
        await tried(['help', name].filter(Boolean)),
        await tried(['help', name, '--lang', 'es'].filter(Boolean)),
      ];
      expect([en.code, en.err, es.code, es.err]).toEqual([0, '', 0, '']);
      expect(en.out).toContain(`cairnmark ${name}`.trim());
      expect(es.out).not.toBe(en.out);
    }
  });

  it('shows the cautions', async () => {
    expect((await tried([])).out).toContain(wordsFor('en').cautions['stands-or-falls']);
    expect((await tried(['help', '--lang', 'es'])).out).toContain(wordsFor('es').cautions['tall-towers']);
  });

  it('does not know every command', async () => {
    expect(await tried(['help', 'rank'])).toMatchObject({ code: 2, out: '' });
  });
});

describe('solids', () => {
  it('lists the catalogue with words for every size and side, in both languages', async () => {
    for (const language of ['en', 'es'] as const) {
      const { code, out } = await tried(['solids', '--lang', language]);
      const { sizes, restings } = wordsFor(language).names;
      expect(code).toBe(0);
      for (const { fields, make, example } of Object.values(CATALOGUE)) {
        for (const name of fields.flatMap((field) => [field.name, ...field.otherwise]))
          expect(sizes).toHaveProperty(name);
        const made = make(example);
        expect(made.ok).toBe(true);
        if (made.ok) for (const { id } of made.value.restings) expect(restings).toHaveProperty(id);
      }
      const [letters, ...solids] = out.split('\n\n').reverse();
      expect(letters).toMatch(/180° \/ n\.\n$/);
      expect(solids).toHaveLength(Object.keys(CATALOGUE).length);
    }
  });

  it('shows a solid with its sizes, workings, counts and sides', async () => {
    const { out } = await tried(['solids']);
    expect(out.split('\n\n')[15]).toBe(
      [
        'Cone: cone',
        '  Sizes: radius or diameter or circumference; height or slant (slant height).',
        '  With radius 30 mm and height 70 mm:',
        '    B = π × r² = π × (3.0 cm)² = 28.27 cm²',
        '    V = 1/3 × B × h = 1/3 × 28.27 cm² × 7.0 cm = 66.0 cm³',
        '    s = √(h² + r²) = √((7.0 cm)² + (3.0 cm)²) = 7.616 cm',
        '    L = π × r × s = π × 3.0 cm × 7.616 cm = 71.78 cm²',
        '    S = B + L = 28.27 cm² + 71.78 cm² = 100.1 cm²',
        '  1 flat face, 1 curved surface, 0 straight edges, 1 curved edge, 0 vertices and 1 tip.',
        '  Rests on:',
        '    base: on a face, 70 mm high',
        '    side: on a line, 55 mm high',
      ].join('\n'),
    );
  });

  it('takes no file', async () => {
    expect(await tried(['solids', 'kit.json'])).toMatchObject({ code: 2, out: '' });
  });
});

describe('check', () => {
  it('says fine of every kept file', async () => {
    const kept = readdirSync(`${CORPUS}kept`).filter((name) => name.endsWith('.json'));
    expect(kept.length).toBeGreaterThan(0);
    const { code, out, err } = await tried(['check', ...kept.map((name) => `${CORPUS}kept/${name}`)]);
    expect([code, err]).toEqual([0, '']);
    expect(out.trimEnd().split('\n')).toHaveLength(kept.length);
  });

  it('says of every broken file what is wrong, where, with nothing left open, and ends with 1', async () => {
    const broken = Object.keys(JSON.parse(readFileSync(`${CORPUS}broken/expected.json`, 'utf8')));
    expect(broken.length).toBeGreaterThan(20);
    for (const name of broken) {
      const path = `${CORPUS}broken/${name}`;
      const [en, es] = [await tried(['check', path]), await tried(['check', path, '--lang', 'es'])];
      expect([name, en.code, en.out]).toEqual([name, 1, '']);
      for (const { err } of [en, es]) {
        for (const line of err.trimEnd().split('\n')) {
          expect(line.startsWith(`${path}: `)).toBe(true);
          expect(line).toMatch(/[.?)]$/);
          expect(line).not.toMatch(/[{}]|"\?"| \? |undefined|\[object/);
        }
        expect(err).not.toMatch(/[^\P{Cc}\n]/u);
      }
      expect(es.err).not.toBe(en.err);
    }
  });

  it('tells of builds with more pieces than the kit has, which is no fault of the file', async () => {
    const layout = numbersOnly('cube', 'cube', 'cube', 'slab');
    const record = classOf({ attempts: [attempt({ id: 'a' }), attempt({ id: 'b', layout })] });
    expect(await tried(['check', 'x.json'], { 'x.json': encode('class', record) })).toMatchObject({
      code: 0,
      out: 'x.json: fine (class).\nx.json: the build b will take no place. Cube: it uses 3, the kit has 2.\n',
      err: '',
    });
  });

  it('tells all faults of all files', async () => {
    const { code, out, err } = await tried(['check', 'none.json', 'text.json', `${CORPUS}kept/kit-v1.json`], {
      'text.json': '{"a":',
    });
    expect(code).toBe(1);
    expect(err).toBe(
      [
        'none.json: There is no such file. Check the name.',
        'text.json: The file cannot be read on from line 1, column 6 (not JSON). Look there and just before: is a comma, quote or bracket missing or one too many? Decimals take a point, and quotes are straight.',
        '',
      ].join('\n'),
    );
    expect(out).toContain('fine (kit)');
  });

  it('names a folder, a file in another code, an empty file and a call without a file', async () => {
    expect((await tried(['check', CORPUS])).err).toBe(`${CORPUS}: This is a folder. Name a file in it.\n`);
    expect((await tried(['check', 'x.json'], { 'x.json': new Uint8Array([0x7b, 0xe9, 0x7d]) })).err).toBe(
      'x.json: This is no text in UTF-8. Choose another file, or save it again as UTF-8.\n',
    );
    expect((await tried(['check', 'x.json'], { 'x.json': '\n' })).err).toBe(
      'x.json: This file is empty. Choose another file.\n',
    );
    expect(await tried(['check'])).toMatchObject({ code: 2, out: '', err: 'Which file? See: cairnmark help check\n' });
  });

  it('reads a file that begins with the mark of the byte order', async () => {
    expect(await tried(['check', 'x.json'], { 'x.json': `\ufeff${demoText}` })).toMatchObject({ code: 0, err: '' });
  });

  it('shows no sign that steers the terminal', async () => {
    const { err } = await tried(['check', '\u001b[2Jx\u202e.json']);
    expect(err).toBe('\ufffd[2Jx\ufffd.json: There is no such file. Check the name.\n');
  });
});
