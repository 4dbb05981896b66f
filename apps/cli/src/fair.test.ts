import { encode } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { challenge, KIT, PAPER } from '../../../tests/reference/small-class.ts';
import { tried } from './tried.ts';

/** A kit of a cube, a cylinder and a cone. */
const ROUND = {
  ...KIT,
  kinds: [
    { id: 'cube', name: 'Cube', solid: { solid: 'cube', sizes: { edge: 50 } } },
    { id: 'drum', name: 'Drum', solid: { solid: 'cylinder', sizes: { radius: 30, height: 50 } } },
    { id: 'cone', name: 'Cone', solid: { solid: 'cone', sizes: { radius: 30, height: 40 } } },
  ].map((kind) => ({ ...kind, stock: 1, material: PAPER, surface: 'paper', friction: 0.4 })) as typeof KIT.kinds,
};

const FILES = {
  'kit.json': encode('kit', ROUND),
  'challenge.json': encode(
    'challenge',
    challenge({ kit: ROUND, points: [{ id: 'c', measure: 'corners', points: 3, per: 1, rounding: 'none' }] }),
  ),
  'one.json': encode('kit', { ...ROUND, kinds: ROUND.kinds.slice(0, 1) }),
};

describe('favour', () => {
  it('shows who earns what, and for each solid its points or why there are none', async () => {
    const { code, out, err } = await tried(['favour', 'challenge.json'], FILES);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Points: Corners: 3 points for every 1 corner.');
    expect(out).toMatch(/^Cube +6 +0 +12 +8 +24 +16\.0$/m);
    expect(out).toContain('These points favour the Cube, by 21 points over the Cone.');
    expect(out).toContain('The highest earns 24, the lowest 0: a gap of 24 points.');
    expect(out).toContain('  Cube: 1 point for every face.');
    // The cone needs more for its tip than the drum for its second face: 1 a corner, and for the cube 8 more of a curved one.
    expect(out).toContain('  Cone: 8 points for every curved surface and 1 point for every corner.');
    expect(out).not.toContain('For a whole build');
  });

  it('shows several rules of one solid with what all pieces earn', async () => {
    const { out } = await tried(['favour', 'kit.json', '--solid', 'drum', '--lead', '3', '--rules', '1'], FILES);
    expect(out).toContain('Points that favour the Drum by 3 points or more, at most 10 points a row:');
    expect(out).toMatch(/Put \d|cannot get that far ahead|1\. /);
  });

  it('proves what cannot be, adds it up, and offers what was tried', async () => {
    const { code, out } = await tried(
      ['favour', 'kit.json', '--solid', 'drum', '--counting', 'a', '--lang', 'es'],
      FILES,
    );
    expect(code).toBe(0);
    expect(out).toContain('No hay puntos que favorezcan a «Drum».');
    expect(out).toContain('«Cube» tiene lo mismo o más de todo lo que puede contar.');
    expect(out).toContain('    Drum: caras 2, aristas 0, vértices 0\n    Cube: caras 6, aristas 12, vértices 8\n');
    expect(out).toContain('Qué ayudaría:');
    expect(out).toContain('Dejar que las filas quiten puntos. Entonces:');
  });

  it('does not say that nothing helps right after it told what does', async () => {
    const { out } = await tried(
      ['favour', 'kit.json', '--solid', 'cone', '--lead', '100', '--most', '1', '--negative'],
      FILES,
    );
    expect(out).toContain('Not with points this small: the Cone cannot get that far ahead.');
    expect(out).toMatch(/From \d+ points a row on it can be done/);
    expect(out).not.toContain('None of the other rows would help');
  });

  it('gives all of it as data, proofs too', async () => {
    const { out } = await tried(['favour', 'kit.json', '--solid', 'cone', '--most', '5', '--as', 'json'], FILES);
    const found = JSON.parse(out);
    expect(found.rows.map(({ id }: { id: string }) => id)).toEqual([
      'faces',
      'curved-surfaces',
      'edges',
      'corners',
      'height',
      'volume',
      'paper',
    ]);
    expect(found.kinds[2]).toMatchObject({ id: 'cone', measures: [1, 1, 0, 1, 4, 3, 7] });
    expect(found.favour).toMatchObject([
      {
        solid: 'cone',
        status: 'impossible',
        why: { code: 'lead-out-of-reach', greatestLead: 0, maxNeeded: 8, atNeeded: { rates: [0, 8, 0, 1] } },
        instead: { status: 'tried' },
      },
    ]);
    expect(found.favour[0].why.proof.noMoreLead.shares).toEqual(expect.arrayContaining([expect.any(Number)]));
  });

  it('half points, rows that take, and other things that count', async () => {
    const half = await tried(['favour', 'kit.json', '--solid', 'cone', '--half', '--lead', '0.5'], FILES);
    expect(half.out).toContain('1. 4 points for every curved surface and 0.5 points for every corner.');
    const taking = await tried(['favour', 'kit.json', '--solid', 'cone', '--negative'], FILES);
    expect(taking.out).toContain(
      '2. 1 point for every corner and −1 point for every edge. The Cone earns 1 point, 1 more than the next.',
    );
    const height = await tried(['favour', 'kit.json', '--solid', 'cube', '--count', 'height,corners'], FILES);
    expect(height.out).toContain('1. 1 point for every corner. The Cube earns 8 points, 7 more than the next.');
  });

  it.each([
    [
      ['favour', 'kit.json', '--solid', 'prism'],
      'There is no solid "prism" in this kit. Use one of: Cube, Drum, Cone.',
    ],
    [['favour', 'kit.json', '--most', '0'], 'The value of "--most" cannot be 0. Use a number from 1 to 100.'],
    [['favour', 'kit.json', '--lead', '1.5'], 'The value of "--lead" cannot be 1.5. Use a number from 1 to 100.'],
    [['favour', 'kit.json', '--counting', 'D'], 'There is no way of counting "D". Use A, B or C.'],
    [
      ['favour', 'kit.json', '--count', 'sides'],
      '"sides" is nothing that a piece has. Use some of: faces, curved-surfaces',
    ],
    [['favour', 'kit.json', '--as', 'csv'], 'The option "--as" cannot be "csv". Use one of: table, json.'],
    [['favour', 'kit.json', 'one.json'], 'One file at a time, please.'],
    [['even', 'kit.json', '--solid', 'cube'], 'There is no option "--solid" here.'],
  ])('%j is not understood', async (args, said) => {
    const { code, out, err } = await tried(args, FILES);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
  });

  it('a kit of one kind has nothing to compare', async () => {
    expect(await tried(['even', 'one.json'], FILES)).toMatchObject({ code: 1, out: '' });
  });
});

describe('even', () => {
  it('finds the fairest points, and why all alike can never be', async () => {
    const { code, out, err } = await tried(['even', 'kit.json'], FILES);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('The fairest points, at most 10 points a row:');
    expect(out).toMatch(/The lowest earns \d+ points, the highest \d+ points\. That is [\d.]+ %\./);
  });

  it('as data', async () => {
    const { out } = await tried(['even', 'kit.json', '--as', 'json', '--most', '5'], FILES);
    const { even } = JSON.parse(out);
    expect(even).toMatchObject({ rows: ['faces', 'curved-surfaces', 'edges', 'corners'], status: 'found' });
    expect(Math.max(...even.rule.rates)).toBeLessThanOrEqual(5);
  });
});
