// What makes a result fair to defend, as the terminal tells it: bonus points, notes, own results, supplies, builds that
// fell, warnings of the day, measures that are not shown.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, classOf, group, KIT, laid, numbersOnly } from '../../../tests/reference/small-class.ts';
import { tried } from './tried.ts';

const GAME: Challenge['supply'] = {
  ends: { kind: 'turns', turns: 7 },
  handOver: 'at-a-touch',
  dropped: 'lost-this-turn',
};
const earned = (id: string, by: string, piece: string, count: number) => ({
  id,
  group: by,
  what: { kind: 'earned', piece, count } as const,
  round: 1,
  carrier: 'first runner',
});

const TALL = challenge({
  requirements: [
    { id: 'no-tape', kind: 'judged', text: 'No tape', consequence: { kind: 'earns', points: 3 } },
    { id: 'earned', kind: 'only-earned', consequence: { kind: 'costs', points: 5 } },
  ],
  points: [{ id: 'height', measure: 'height', points: 2, per: 10, rounding: 'down' }],
  ranking: { first: { by: 'points', better: 'more', roundTo: 1 }, tieBreaks: [] },
  fallen: { counts: 'points', points: 1 },
  own: { pi: '3.14', closeShare: 0.05, rewards: [{ measure: 'volume', points: 7 }] },
  supply: GAME,
  hidden: ['paper', 'vertices', 'height'],
});
const LOW = challenge({
  id: 'low',
  name: 'Low',
  points: [{ id: 'base', measure: 'base-area', points: 1, per: 100, rounding: 'down' }],
});
/** A slab and a cube: 197 cm3, 80 mm high; the terns took a cube too many, and half the volume of another. */
const CLASS: ClassRecord = classOf({
  groups: [group('terns'), group('puffins'), group('gannets')],
  challenges: [TALL, LOW],
  attempts: [
    attempt({
      id: 'terns-1',
      answers: { 'no-tape': { kept: true, note: 'looked twice' } },
      own: [{ measure: 'volume', value: 98_500 }],
    }),
    attempt({
      id: 'puffins-1',
      group: 'puffins',
      answers: { 'no-tape': { kept: false } },
      own: [{ measure: 'volume', value: 197_000 }],
    }),
    attempt({ id: 'gannets-1', group: 'gannets', state: { kind: 'fell', afterSeconds: 7 } }),
  ],
  supplies: {
    tall: [
      earned('s1', 'terns', 'slab', 1),
      earned('s2', 'puffins', 'slab', 1),
      earned('s3', 'puffins', 'cube', 1),
      { id: 's4', group: 'puffins', what: { kind: 'penalty', points: 2, reason: 'ran indoors' } },
    ],
  },
});
const FILES = { 'class.json': encode('class', CLASS) };
const linesOf = (out: string): readonly string[] => out.split('\n').map((line) => line.trim());

describe('score with rows', async () => {
  const { out, err, code } = await tried(['score', 'class.json', '--rows'], FILES);
  const lines = linesOf(out);

  it('shows what rules earned and cost, with the note, and the rewards of own results', () => {
    expect([code, err]).toEqual([0, '']);
    for (const line of [
      '"No tape" was kept. It earns 3 points. Note: looked twice',
      'Only pieces that the group earned may be used. Cube: it uses 1, the group has 0. It costs 5 points.',
      'Volume: you found 197 cm³. That agrees. It earns 7 points.',
      // 16 for 80 mm, 3 for no tape, less 5; 16 and 7.
      'Total: 14 points',
      'Total: 23 points',
    ]) {
      expect(lines).toContain(line);
    }
  });

  it('shows every own result, also one that earns nothing', () => {
    const own = out.slice(out.indexOf('Own results of the groups:'), out.indexOf('Supply:'));
    expect(own).toContain('  terns\n    Volume: you found 98.5 cm³. Check your working.');
    expect(own).toContain('  puffins\n    Volume: you found 197 cm³. That agrees.');
  });

  it('shows the supply of every group, under the rules of the game', () => {
    const supply = out.slice(out.indexOf('Supply:'), out.indexOf('\nLow\n'));
    expect(linesOf(supply)).toEqual([
      'Supply:',
      'The game ends after 7 turns.',
      'The next one goes at a touch of hands.',
      'A piece that is dropped is lost for this turn.',
      'puffins',
      '2 pieces: 1 × Slab and 1 × Cube.',
      'Earned round by round: 2 pieces in round 1.',
      'Earned by carrier: 2 pieces by first runner.',
      'Penalties: 2 points.',
      'terns',
      '1 piece: 1 × Slab.',
      'Earned round by round: 1 piece in round 1.',
      'Earned by carrier: 1 piece by first runner.',
      '',
    ]);
  });

  it('places a build that fell with its stated points, and shows no row that does not count', () => {
    expect(out).toMatch(/3rd +gannets +1 point +Fell after 7 seconds\. It counts 1 point, whatever was measured\.\n/);
    const rows = out.slice(out.indexOf('gannets (gannets-1)'), out.indexOf('Own results of the groups:'));
    expect(linesOf(rows)).toEqual([
      'gannets (gannets-1)',
      'Fell after 7 seconds. It counts 1 point, whatever was measured.',
      'Total: 1 point',
      '',
    ]);
  });

  it('warns below the day of points that come from different units', () => {
    expect(out).toMatch(
      /\nLook at this before you trust the places:\n {2}The points of Tall and Low are added up .*: lengths and areas\..*\n$/,
    );
  });

  it('leaves out what nobody asked for', async () => {
    const plain = (await tried(['score', 'class.json'], FILES)).out;
    for (const heading of ['Points, row by row', 'Own results', 'Supply']) expect(plain).not.toContain(heading);
  });
});

describe('measure', () => {
  it('shows own results first, the supply, and none of what is hidden but what scores', async () => {
    const { out, code } = await tried(['measure', 'class.json', '--attempt', 'puffins-1'], FILES);
    expect(code).toBe(0);
    const lines = linesOf(out);
    expect(lines.slice(3, 6)).toEqual([
      'Own results of the group:',
      'Volume: you found 197 cm³. That agrees. It earns 7 points.',
      // Two lengths of a slab and one of a cube, read to the millimetre.
      expect.stringMatching(/^Volume, worked out with π as 3\.14: 197 cm³ ± \d+ cm³\.$/),
    ]);
    expect(lines).toContain('Not shown to this class: paper and vertices.');
    expect(out).not.toMatch(/\n(Paper|Vertices): /);
    expect(out).toMatch(/\nHeight: 80 mm/);
    expect(out).toContain('\nSupply of the group:\n  2 pieces: 1 × Slab and 1 × Cube.\n');
    expect(out).toContain('\nPieces earned: 2 pieces earned (measured)\n');
  });

  it('says of a build that fell what that counts', async () => {
    const { out } = await tried(['measure', 'class.json', '--attempt', 'gannets-1', '--lang', 'es'], FILES);
    expect(linesOf(out)[3]).toBe('Se cayó después de 7 segundos. Cuenta 1 punto, sea cual sea su medida.');
  });

  it('tells a fault of a supply list at its place in the file', async () => {
    const strokes = [...(CLASS.supplies['tall'] ?? []), earned('s5', 'terns', 'cube', 7)];
    const files = {
      'class.json': JSON.stringify({ ...JSON.parse(FILES['class.json']), supplies: { tall: strokes } }),
    };
    for (const command of [['check'], ['score'], ['measure', '--attempt', 'terns-1']]) {
      const { err, code } = await tried([...command, 'class.json'], files);
      expect([command, code, err]).toEqual([
        command,
        1,
        'class.json: supplies, tall 5: This hands out 7 of "cube"; left in the stock: 1. Check the number.\n',
      ]);
    }
  });
});

describe('the table for a spreadsheet', () => {
  it('has the points of own results and what the sums say of standing', async () => {
    const { out } = await tried(['score', 'class.json', '--as', 'csv'], FILES);
    const rows = out.trimEnd().split('\r\n');
    expect(rows.find((row) => row.includes('puffins-1'))).toMatch(/,steady,7$/);
    expect(rows.find((row) => row.includes('terns-1'))).toMatch(/,steady,0$/);
    expect(rows.find((row) => row.startsWith('Low,terns'))).toMatch(/,,$/);
  });
});

describe('a rule about kinds', () => {
  it('keeps a build out, with every kind that is too many', async () => {
    const cubes = challenge({
      requirements: [{ id: 'cubes', kind: 'only-kinds', kinds: ['cube'], consequence: { kind: 'must' } }],
    });
    const record = classOf({
      challenges: [cubes],
      attempts: [
        attempt({ layout: laid('slab', 'cube') }),
        attempt({ id: 'b', group: 'puffins', layout: numbersOnly() }),
      ],
    });
    const { out } = await tried(['score', 'c.json'], { 'c.json': encode('class', record) });
    expect(linesOf(out)).toContain('terns: A rule is broken. Only these kinds may be used: Cube. Slab: it uses 1.');
    expect(linesOf(out)).toContain('puffins: Not measured: height and pieces.');
    expect(KIT.kinds.map(({ name }) => name)).toEqual(['Slab', 'Cube']);
  });
});

describe('a rule that nobody has judged yet', () => {
  it('stands beside the place that hangs on it, and among the points', async () => {
    const tape = (kind: 'must' | 'earns') =>
      challenge({
        requirements: [
          {
            id: 'tape',
            kind: 'judged',
            text: 'No tape',
            consequence: kind === 'must' ? { kind } : { kind, points: 3 },
          },
        ],
      });
    const told = async (kind: 'must' | 'earns') => {
      const record = classOf({ challenges: [tape(kind)], attempts: [attempt({ answers: {} })] });
      return (await tried(['score', 'c.json', '--rows'], { 'c.json': encode('class', record) })).out;
    };
    expect(await told('must')).toMatch(/1st +terns +80 mm +"No tape" has not been judged yet\.\n/);
    expect(await told('earns')).toMatch(/1st +terns +80 mm\n/);
    expect(linesOf(await told('earns'))).toContain('"No tape" has not been judged yet.');
  });
});

describe('a measure just below a whole step', () => {
  it('is shown in full where reading it would carry it over', async () => {
    const read = async (heightMm: number) => {
      const one = attempt({ observed: { heightReadingsMm: [heightMm] } });
      const record = classOf({ attempts: [one] });
      return linesOf((await tried(['score', 'c.json', '--rows'], { 'c.json': encode('class', record) })).out);
    };
    const rate = '2 points for every 10 mm, rounded down:';
    expect(await read(379.9)).toContain(`Height 379.9 mm. ${rate} 37 × 2 points = 74 points`);
    expect(await read(380.1)).toContain(`Height 380 mm. ${rate} 38 × 2 points = 76 points`);
    expect(await read(377.9)).toContain(`Height 378 mm. ${rate} 37 × 2 points = 74 points`);
  });
});
