import { demoClass, demoText } from '@cairnmark/demo';
import { scoreClass } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import { MEASURES } from '@cairnmark/geometry';
import { wordsFor } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { STATICS } from '../../../tests/reference/small-class.ts';
import { share } from '../../../tests/tools/share.ts';
import { tried } from './tried.ts';

const DEMO = demoClass();
const ENGLISH = await tried(['score', '--rows']);
const DATA = JSON.parse((await tried(['score', '--as', 'json'])).out);
const [TALL] = DEMO.challenges;
const tallAttempts = DEMO.attempts.filter(({ challenge }) => challenge === TALL?.id);
const LOOSE: Readonly<Record<string, string>> = {
  'tall.json': encode('challenge', TALL!),
  ...Object.fromEntries(tallAttempts.map((attempt) => [`${attempt.id}.json`, encode('attempt', attempt)])),
};

/** At the end of a line what a row earned, free or held, or what a broken rule costs; at its beginning what a person gave or took. */
const POINTS =
  /= (−?[\d.]+) points?(?:, but at (?:most|least) ([\d.]+) points?)?$|^ {4}(−?[\d.]+) points? by |It costs ([\d.]+) points?/g;

describe('score', () => {
  it('scores the demo class, says that it is invented, and marks ties and near ties', () => {
    const { code, out, err } = ENGLISH;
    expect([code, err]).toEqual([0, '']);
    const lines = out.split('\n').map((line) => line.replace(/ +/g, ' '));
    expect(lines.slice(0, 2)).toEqual(['Skerry Light', 'All data of this class is invented.']);
    for (const line of [
      ' 1st Puffins 379 mm best of 2 attempts',
      ' 2nd Gannets 349 mm shared with Terns; within measuring error of Fulmars',
      ' 2nd Terns 349 mm shared with Gannets; within measuring error of Fulmars',
      ' 4th Fulmars 347 mm within measuring error of Gannets and Terns',
      ' Eiders: A rule is broken. Area on the table 25.0 cm². The rule says at most 24 cm².',
      ' Eiders: Fell after 2 seconds.',
      ' Petrels: Absent: no result. That is not 0.',
    ]) {
      expect(lines).toContain(line);
    }
    expect(out).toMatch(
      /^Decided by people:\n {2}Petrels: height 320 mm instead of 321 mm, decided by teacher: Two readers/m,
    );
    expect(out).not.toMatch(/[{}]|"\?"| \?|undefined|null|NaN/);
  });

  it('speaks Spanish', async () => {
    const { out } = await tried(['score', '--rows', '--lang', 'es']);
    expect(out).toContain('Todos los datos de esta clase son inventados.');
    expect(out).toContain('empatado con Terns; dentro del error de medida de Fulmars');
    expect(out).not.toMatch(/[{}]|undefined|null|NaN|\d\.\d/);
  });

  it('shows the points row by row, and they add up', () => {
    const sections = ENGLISH.out.split('Points, row by row:\n').slice(1);
    const blocks = sections.flatMap((text) => (text.split('\n\n')[0] ?? '').split(/^ {2}(?=\S)/m).slice(1));
    expect(blocks.length).toBeGreaterThan(10);
    for (const block of blocks) {
      const [, ...lines] = block.trimEnd().split('\n');
      const rows = lines.flatMap((line) => [...line.matchAll(POINTS)]);
      const sum = rows.reduce(
        (total, [, free, held, byHand, cost]) =>
          total + Number((held ?? free ?? byHand ?? '').replace('−', '-')) - Number(cost ?? 0),
        0,
      );
      expect(lines.find((line) => line.startsWith('    Total'))).toBe(
        `    Total: ${wordsFor('en').counted('points', sum)}`,
      );
    }
  });

  it('gives everything as data', () => {
    const result = scoreClass(DEMO, STATICS);
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    expect(DATA).toMatchObject({ class: 'Skerry Light', invented: true });
    expect(DATA.standings).toEqual(Object.fromEntries(result.value.standings));
    expect(DATA.day).toEqual(result.value.day);
    expect(DATA.warnings).toEqual(result.value.warnings);
    expect(Object.keys(DATA.reports)).toEqual(DEMO.challenges.map(({ id }) => id));
  });

  it('gives a table for a spreadsheet: units in the header, an absent build empty and not 0', async () => {
    const { out } = await tried(['score', '--as', 'csv']);
    const [header = '', ...lines] = out.slice(1).trimEnd().split('\r\n');
    expect(header).toMatch(
      /^Challenge,Group,Attempt,Place,Why not ranked,Points,Height \(mm\),Footprint area \(mm²\),/,
    );
    expect(header).toMatch(/,Tilt it stands to \(°\),.*,Does it stand\?,Points for own results$/);
    expect(lines).toHaveLength(DEMO.attempts.length);
    // Two columns at the end: what the sums say, and no own result handed in.
    expect(lines[1]).toMatch(/^Tall Light,Puffins,tall-light-puffins-0941,1,.*,wobbly,$/);
    expect(lines[0]).toMatch(/^Tall Light,Puffins,tall-light-puffins-0920,,Another attempt of the group counts\.,/);
    const absent = lines.find((line) => line.startsWith('Harbour Wall,Petrels'));
    expect(absent).toMatch(/^Harbour Wall,Petrels,[\w-]+,,Absent: no result\. That is not 0\.,,+$/);
  });

  it('disarms a name that a spreadsheet would take for a formula', async () => {
    const record = {
      ...DEMO,
      attempts: tallAttempts.slice(0, 1),
      groups: DEMO.groups.map((group, k) => (k === 0 ? { ...group, name: '=1+1' } : group)),
    };
    const { out } = await tried(['score', 'x.json', '--as', 'csv'], { 'x.json': encode('class', record) });
    expect(out).toContain("Tall Light,'=1+1,");
    expect(out).not.toMatch(/(^|,)=/m);
  });

  it('scores a challenge with its attempts as the class does', async () => {
    const { code, out, err } = await tried(['score', ...Object.keys(LOOSE), '--as', 'json'], LOOSE);
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out).standings[TALL!.id]).toEqual(DATA.standings[TALL!.id]);
  });

  it('says which files do not go together', async () => {
    const files = { ...LOOSE, 'class.json': demoText, 'kit.json': encode('kit', TALL!.kit) };
    const one = `${tallAttempts[0]!.id}.json`;
    const told = async (...names: string[]): Promise<string> => (await tried(['score', ...names], files)).err;
    expect(await told('class.json', one)).toBe(`${one}: A class file holds all of it. Name it alone.\n`);
    expect(await told('class.json', 'class.json')).toBe(
      'class.json: This is a second class. Name one class file at a time.\n',
    );
    expect(await told('tall.json', 'tall.json')).toBe(
      'tall.json: This is a second challenge. Name one challenge file at a time.\n',
    );
    expect(await told(one)).toBe(`${one}: No challenge stands beside these attempts. Name its file too.\n`);
    expect(await told('tall.json')).toBe('tall.json: There is no attempt in these files. Add an attempt file.\n');
    expect(await told('tall.json', 'kit.json')).toMatch(/^kit\.json: This file \(kit\) cannot be scored alone\./);
  });

  it('tells a fault of the whole at its place in the file it stands in', async () => {
    const stray = { ...tallAttempts[1]!, challenge: 'wide-light' };
    const files = { ...LOOSE, 'stray.json': encode('attempt', stray) };
    const { code, err } = await tried(['score', 'tall.json', `${tallAttempts[0]!.id}.json`, 'stray.json'], files);
    expect([code, err]).toEqual([
      1,
      'stray.json: challenge: There is no challenge "wide-light". Check the spelling, or add the challenge.\n',
    ]);
  });
});

describe('measure', () => {
  it('shows every fact with its working, what it rests on, the rules and the points', async () => {
    const { code, out, err } = await tried(['measure', '--attempt', 'harbour-wall-puffins-1108']);
    expect([code, err]).toEqual([0, '']);
    for (const line of [
      'Puffins, Harbour Wall (harbour-wall-puffins-1108)',
      'All data of this class is invented.',
      '    Cone: V = 1/3 × B × h = 1/3 × 28.27 cm² × 4.0 cm = 37.7 cm³',
      '    Cube: 4 × 125 cm³ = 500 cm³',
      'Surfaces less than 0.05 mm apart count as touching.',
      'On the table means: outline of the pieces that touch the table.',
      '  12 pieces. The rule says at most 16 pieces. Kept.',
    ]) {
      expect(out.split('\n')).toContain(line);
    }
    for (const { id } of MEASURES) {
      expect(out).toContain(`\n${wordsFor('en').capital(wordsFor('en').names.measures[id])}: `);
    }
    expect(out).not.toMatch(/[{}]|"\?"| \?|undefined|NaN/);
  });

  const some = DEMO.attempts.filter((_, k) => k % share(1, 5) === 0);
  it(`has something to say of ${some.length} builds of the demo, in both languages`, async () => {
    for (const { id } of some) {
      for (const language of ['en', 'es']) {
        const { code, out, err } = await tried(['measure', '--attempt', id, '--lang', language]);
        expect([id, code, err]).toEqual([id, 0, '']);
        expect(out).not.toMatch(/[{}]|"\?"| \?|undefined|NaN/);
      }
    }
  });

  it('takes the only attempt there is, and asks which when there are several', async () => {
    const one = `${tallAttempts[0]!.id}.json`;
    expect(await tried(['measure', 'tall.json', one], LOOSE)).toMatchObject({ code: 0, err: '' });
    expect((await tried(['measure', 'x.json'], { 'x.json': demoText })).err).toMatch(
      /^x\.json: There are several attempts\. Say which/,
    );
    expect((await tried(['measure', '--attempt', 'nobody'])).err).toMatch(
      /^There is no attempt "nobody"\. Use one of:\n {2}tall-light-puffins-0920 +Puffins +Tall Light\n/,
    );
  });

  it('says of a group that was absent nothing but that', async () => {
    const { code, out } = await tried(['measure', '--attempt', 'harbour-wall-petrels-1124']);
    expect(code).toBe(0);
    expect(out.split('\n').slice(2)).toEqual(['', 'Absent: no result. That is not 0.', '']);
  });
});
