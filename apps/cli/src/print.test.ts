import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoText } from '@cairnmark/demo';
import { afterAll, describe, expect, it } from 'vitest';
import { pagesOf } from '../../../tests/reference/print/poppler.ts';
import { hasPoppler } from '../../../tests/tools/poppler.mjs';
import { tried } from './tried.ts';

const FOLDER = mkdtempSync(join(tmpdir(), 'printed-'));
const inFolder = (name: string): string => join(FOLDER, name);
afterAll(() => rmSync(FOLDER, { recursive: true }));

/** The demo class without builds and with these kinds alone, in other sizes. */
function demoWith(sizes: Readonly<Record<string, Readonly<Record<string, number>>>>, ruler = 'mm'): string {
  const record = JSON.parse(demoText);
  for (const challenge of record.challenges) {
    challenge.ruler = ruler;
    challenge.kit.kinds = challenge.kit.kinds.filter(({ id }: { id: string }) => sizes[id] !== undefined);
    for (const { id, solid } of challenge.kit.kinds) solid.sizes = sizes[id];
  }
  const groups = record.groups.map((group: object) => ({ ...group, measured: {} }));
  return JSON.stringify({ ...record, groups, attempts: [], supplies: {} });
}

const pagesIn = (pdf: string): number => pagesOf(readFileSync(pdf));

const KIT = JSON.stringify({
  format: 'cairnmark/kit',
  version: 3,
  id: 'kit',
  name: 'Kit',
  frictions: [],
  kinds: [],
});

describe('print', () => {
  it('tells what is on the pages, what is not, and how often sheets are copied', async () => {
    const nets = await tried(['print', '--masters', '--sets', '7', '-o', inFolder('nets.pdf')]);
    expect(nets.out).toMatch(/^All data of this class is invented\.\n.*nets\.pdf: 12 pages, A4\.\n/);
    expect(nets.out).toMatch(/\n\d+ nets: Cube 1, Cuboid 1, .*, Icosahedron \d\.\n/);
    expect(nets.out).toMatch(/\nCopied as often as each page says, they take \d\d sheets of paper\.\n/);
    expect(nets.out).toContain('\nNot of paper, so without a net: Ball (bought).\n');
    const sheets = await tried(['print', '--what', 'sheets', '--pupils', '23', '-o', inFolder('sheets.pdf')]);
    expect(sheets.out).toMatch(/sheets\.pdf: 14 pages, A4\.\n/);
    expect(sheets.out).toMatch(/\n {2}Full measuring table +1 page {2}copies: 12\n/);
    expect(sheets.out).toMatch(/\n {2}Rule sheet +1 page {2}copies: 6\n/);
    expect(sheets.out).not.toContain('Game sheet');
    if (hasPoppler()) expect([pagesIn(inFolder('nets.pdf')), pagesIn(inFolder('sheets.pdf'))]).toEqual([12, 14]);
  });

  it.skipIf(!hasPoppler())('writes as many pages as it tells', async () => {
    const calls = [
      [['--paper', 'letter', '--lang', 'es'], /: (\d+) páginas, Carta\./],
      [['--what', 'sheets', '--sheet', 'rules', '--large-print'], /: (\d+) pages?, A4\./],
      [['--what', 'ground', '--forts'], /: (\d+) pages, A4\./],
      [['--what', 'gores'], /: (\d+) page, A4\./],
    ] as const;
    for (const [k, [words, told]] of calls.entries()) {
      const pdf = inFolder(`${k}.pdf`);
      const { code, out, err } = await tried(['print', ...words, '-o', pdf]);
      expect([code, err]).toEqual([0, '']);
      expect([words, pagesIn(pdf)]).toEqual([words, Number(told.exec(out)?.[1])]);
    }
  });

  it('tells the largest size of what is too large, as the ruler of the class reads, and can print it in parts', async () => {
    const files = {
      'cm.json': demoWith({ cube: { edge: 80 }, cylinder: { diameter: 95, height: 150 }, tetrahedron: { edge: 70 } }),
      'in.json': demoWith({ cube: { edge: 80 }, cone: { diameter: 50, height: 60 } }, 'quarter-inch'),
    };
    const told = await tried(['print', 'cm.json', '-o', inFolder('large.pdf')], files);
    expect(told.code).toBe(0);
    expect(told.out).toContain(
      '\nLeft out: Cube is too large for A4. In this shape, its edge can be 6.6 cm at most. Or let it be printed in 2 parts.\n',
    );
    expect(told.out).toMatch(
      /\nLeft out: Cylinder is too large for A4, and no way to part it helps\. .* 4\.1 cm at most\.\n/,
    );
    expect(told.out).toContain('Add --split');
    const inches = await tried(['print', 'in.json', '-o', inFolder('large.pdf')], files);
    expect(inches.out).toContain('large.pdf: 1 page, Letter.\n');
    expect(inches.out).toContain('its edge can be 2 1/4 in at most');
    const split = await tried(['print', 'cm.json', '--split', '-o', inFolder('large.pdf')], files);
    expect(split.out).toContain('Cube 1, ');
    expect(split.out).not.toContain('Add --split');
  });

  it('draws nets for machines that cut, with or without a PDF', async () => {
    const { code, out } = await tried(['print', '--svg', inFolder('svg/demo')]);
    expect(code).toBe(0);
    expect(readdirSync(inFolder('svg/demo'))).toHaveLength(12);
    expect(readFileSync(inFolder('svg/demo/cone.svg'), 'utf8')).toMatch(/^<svg [\s\S]*<g id="cut"[\s\S]*<\/svg>\n$/);
    expect(out).not.toContain('Print at 100 %');
  });

  it('reads a challenge or a kit, and says what cannot be printed of it', async () => {
    const corpus = (name: string): string => join(import.meta.dirname, '../../../tests/corpus', name);
    const pdf = inFolder('other.pdf');
    const challenge = await tried([
      'print',
      corpus('kept/challenge-v4.json'),
      '--what',
      'sheets',
      '--sheet',
      'game',
      '-o',
      pdf,
    ]);
    expect([challenge.code, challenge.err]).toEqual([0, '']);
    const kit = await tried(['print', corpus('kept/kit-v3.json'), '-o', pdf]);
    expect(kit.out).toContain('2 nets: Wedge 1, Drum 1.');
    const faults = [
      [[corpus('kept/kit-v3.json'), '--what', 'sheets'], 'A kit has no rules to print.'],
      [[corpus('kept/attempt-v3.json')], 'has nothing to print'],
      [[corpus('broken/cut-off.json')], 'cut-off.json: '],
      [['--what', 'sheets', '--sheet', 'game'], 'not earned in a game'],
      [['--challenge', 'Low'], 'There is no challenge "Low". Use one of: Tall Light'],
      [['kit.json'], 'No piece of this kit is of paper'],
    ] as const;
    for (const [words, sentence] of faults) {
      const { code, out, err } = await tried(['print', ...words, '-o', inFolder('never.pdf')], { 'kit.json': KIT });
      expect([words, code, out]).toEqual([words, 1, '']);
      expect(err).toContain(sentence);
    }
    expect(existsSync(inFolder('never.pdf'))).toBe(false);
  });

  it('replaces a PDF by a whole one, and leaves everything as it was where it cannot write', async () => {
    const [pdf, folder] = [inFolder('again.pdf'), inFolder('locked')];
    writeFileSync(pdf, 'old');
    const again = await tried(['print', '--what', 'ground', '-o', pdf]);
    expect(again.out).toContain(
      'again.pdf: 1 page, A4.\n  A file of this name was there before; this one took its place.\n',
    );
    expect(readFileSync(pdf, 'latin1')).toMatch(/^%PDF-1\.4[\s\S]*%%EOF\n?$/);
    mkdirSync(folder);
    mkdirSync(inFolder('folder.pdf'));
    chmodSync(folder, 0o500);
    const places: (readonly [string, string])[] = [
      [inFolder('none/x.pdf'), 'There is no such folder'],
      [inFolder('folder.pdf'), 'This is a folder.'],
      // Root may write anywhere.
      ...(process.getuid?.() === 0 ? [] : [[join(folder, 'x.pdf'), 'Nothing can be written here.'] as const]),
    ];
    for (const [place, sentence] of places) {
      const { code, out, err } = await tried(['print', '--what', 'ground', '-o', place]);
      expect([code, out]).toEqual([1, '']);
      expect(err).toContain(sentence);
    }
    expect([readdirSync(folder), readdirSync(FOLDER).filter((name) => name.includes('.part'))]).toEqual([[], []]);
  });

  it('says what it did not understand', async () => {
    const calls = [
      [[], 'Where to? Write -o'],
      [['-o', 'x.json'], 'The PDF cannot be called "x.json".'],
      [['-o', 'x.pdf', '--forts'], 'The option "--forts" goes with --what ground.'],
      [['-o', 'x.pdf', '--what', 'sheets', '--sheet', 'poem'], 'There is no sheet "poem". Use one of: lesson-plan, '],
      [['-o', 'x.pdf', '--sets', '1.5'], 'The option "--sets" cannot be "1.5". Use a whole number from 1 to 100.'],
      [
        ['-o', 'x.pdf', '--what', 'cards'],
        'The option "--what" cannot be "cards". Use one of: nets, sheets, ground, gores.',
      ],
      [['-o', 'x.pdf', 'a.json', 'b.json'], 'One file at a time'],
    ] as const;
    for (const [words, sentence] of calls) {
      const { code, out, err } = await tried(['print', ...words]);
      expect([words, code, out]).toEqual([words, 2, '']);
      expect(err).toContain(sentence);
    }
    const spanish = await tried(['print', '--lang', 'es']);
    expect(spanish.err).toBe('¿Dónde se escribe? Pon -o y un nombre que acabe en .pdf. Mira: cairnmark help print\n');
  });

  it('names every sheet in its help', async () => {
    for (const language of ['en', 'es']) {
      const [{ out }, { err }] = [
        await tried(['help', 'print', '--lang', language]),
        await tried(['print', '--what', 'sheets', '--sheet', 'x', '-o', 'x.pdf', '--lang', language]),
      ];
      const ids = err.replace(/^.*: /, '').replace(/\.\n$/, '').split(', ');
      // Table cards come when a class is shared.
      expect(ids.filter((id) => !out.includes(id))).toEqual(['table-cards']);
    }
  });
});
