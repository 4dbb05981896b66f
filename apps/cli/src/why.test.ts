import { demoClass } from '@cairnmark/demo';
import { encode } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, classOf, numbersOnly } from '../../../tests/reference/small-class.ts';
import { tried } from './tried.ts';

const why = async (...args: string[]) => await tried(['why', ...args]);
const DEMO = demoClass();

describe('why, of two groups', () => {
  it('says challenge by challenge what separates them, who is ahead and by what', async () => {
    const { code, out, err } = await why('Puffins', 'terns');
    expect([code, err]).toEqual([0, '']);
    const lines = out.split('\n');
    expect(lines.slice(0, 2)).toEqual(['All data of this class is invented.', 'Puffins and Terns']);
    for (const { name } of DEMO.challenges) expect(lines).toContain(name);
    for (const line of [
      '  Height: 379 mm (Puffins), 349 mm (Terns). Ahead: Puffins, by 30 mm.',
      '  Points for height: 37 points (Puffins), 34 points (Terns). Ahead: Puffins, by 3 points.',
      '  Points: 52 points (Puffins), 36 points (Terns). Ahead: Puffins, by 16 points.',
    ]) {
      expect(lines).toContain(line);
    }
  });

  it('marks what is within measuring error, goes on to what breaks a tie, and keeps to one challenge', async () => {
    const read = (id: string, group: string, where: string, heightMm: number, ...pieces: string[]) =>
      attempt({
        id,
        group,
        challenge: where,
        layout: numbersOnly(...pieces),
        observed: { heightReadingsMm: [heightMm] },
      });
    const fewest = challenge({
      id: 'few',
      name: 'Few',
      ranking: {
        first: { by: 'height', better: 'more', roundTo: 10 },
        tieBreaks: [{ by: 'pieces', better: 'less', roundTo: 0 }],
      },
    });
    const record = classOf({
      challenges: [challenge(), fewest],
      attempts: [
        read('a', 'terns', 'tall', 352, 'slab'),
        read('b', 'puffins', 'tall', 350, 'slab'),
        read('c', 'terns', 'few', 352, 'slab', 'cube', 'cube'),
        read('d', 'puffins', 'few', 350, 'slab', 'cube'),
      ],
    });
    const files = { 'c.json': encode('class', record) };
    const { out } = await tried(['why', 'c.json', 'terns', 'puffins'], files);
    expect(out).toContain('Ahead: terns, by 2 mm. That is within measuring error.');
    const few = (await tried(['why', 'c.json', 'terns', 'puffins', '--challenge', 'FEW'], files)).out;
    expect(few).not.toContain('\nTall\n');
    expect(few).toContain(
      '\n  Height: the same, 350 mm.\n  Pieces: 3 pieces (terns), 2 pieces (puffins). Ahead: puffins, by 1 piece.\n',
    );
  });

  it('says which of them takes no place, and compares what was measured all the same', async () => {
    const attempts = [attempt({ state: { kind: 'fell', afterSeconds: 2 } }), attempt({ id: 'b', group: 'puffins' })];
    const files = { 'c.json': encode('class', classOf({ attempts })) };
    const { out } = await tried(['why', 'c.json', 'terns', 'puffins', '--lang', 'es'], files);
    expect(out).toContain('\n  terns no tiene puesto: Se cayó después de 2 segundos.\n  Altura: igual, 80 mm.\n');
    expect(out).toContain('\n  Total: sin resultado (terns), 16 puntos (puffins). Por delante: puffins.');
    expect(out).not.toMatch(/[{}]|undefined|null|NaN|\d\.\d/);
  });

  it('never says that a group that was absent kept a rule', async () => {
    const five = {
      measure: 'pieces',
      comparison: 'exactly',
      limit: 5,
      consequence: { kind: 'costs', points: 5 },
    } as const;
    const requirements = [{ id: 'five', kind: 'measured', ...five }] as const;
    const away = { id: 'b', group: 'puffins', state: { kind: 'absent' }, layout: numbersOnly() } as const;
    const record = classOf({ challenges: [challenge({ requirements })], attempts: [attempt(), attempt(away)] });
    for (const pair of [
      ['terns', 'puffins'],
      ['puffins', 'terns'],
    ]) {
      const { out } = await tried(['why', 'c.json', ...pair], { 'c.json': encode('class', record) });
      expect(out).toContain('puffins takes no place: Absent');
      expect(out).not.toMatch(/kept[^(]*\(puffins\)/);
    }
  });

  it('says so when they have no challenge in common', async () => {
    const record = classOf({ attempts: [attempt()] });
    const { code, out } = await tried(['why', 'c.json', 'terns', 'puffins'], { 'c.json': encode('class', record) });
    expect([code, out.split('\n').at(-2)]).toEqual([
      0,
      'terns and puffins have no challenge in which both have a build.',
    ]);
  });
});

describe('why, of one group', () => {
  it('says what changed between its last two tries, and what separates them', async () => {
    const { out, code } = await why('puffins');
    expect(code).toBe(0);
    for (const line of [
      'What changed: Puffins',
      '  Try 1: tall-light-puffins-0920',
      '  Try 2: tall-light-puffins-0941',
      '    Height: 270 mm before, 379 mm now.',
      '    Cube: 2 pieces before, 0 pieces now.',
      '    Height: 270 mm (try 1), 379 mm (try 2). Ahead: try 2, by 109 mm.',
    ]) {
      expect(out.split('\n')).toContain(line);
    }
    expect(out).not.toContain('Narrow Rock');
  });

  it('goes by the time of the tries, whatever their order and zone, and hides what the class does not see', async () => {
    const reading = (id: string, at: string, heightMm: number) =>
      attempt({ id, at, layout: numbersOnly('slab', 'cube'), observed: { heightReadingsMm: [heightMm] } });
    const record = classOf({
      challenges: [challenge({ hidden: ['volume'] })],
      attempts: [
        reading('third', '2026-03-05T09:50:00Z', 150),
        reading('first', '2026-03-05T10:20:00+01:00', 70),
        attempt({ id: 'second', at: '2026-03-05T09:30:00Z', layout: numbersOnly('slab') }),
      ],
    });
    const { out } = await tried(['why', 'c.json', 'terns'], { 'c.json': encode('class', record) });
    expect(out).toContain('  Try 2: second\n  Try 3: third\n');
    expect(out).toContain('    Height: not measured before, 150 mm now.\n');
    expect(out).toContain('    Pieces: 1 piece before, 2 pieces now.\n');
    expect(out).not.toMatch(/Volume: /);
  });

  it('says so when there is one try', async () => {
    const files = { 'c.json': encode('class', classOf({ attempts: [attempt()] })) };
    const { out } = await tried(['why', 'c.json', 'terns'], files);
    expect(out).toMatch(
      /\nThere is no challenge at which terns tried twice or more\. To see .*, name that group too\.\n$/,
    );
  });
});

describe('why, not understood', () => {
  it('names the groups and the challenges that there are', async () => {
    const { code, out, err } = await why('owls', 'terns', '--challenge', 'wide');
    expect([code, out]).toEqual([1, '']);
    expect(err).toBe(
      'There is no group "owls". Use one of: Puffins, Terns, Gannets, Fulmars, Petrels, Eiders.\nThere is no challenge "wide". Use one of: Tall Light, Narrow Rock, Harbour Wall.\n',
    );
  });

  it('asks for one group or two', async () => {
    for (const names of [[], ['terns', 'terns'], ['terns', 'puffins', 'eiders']]) {
      expect(await why(...names)).toMatchObject({
        code: 2,
        out: '',
        err: 'Name one group or two. See: cairnmark help why\n',
      });
    }
  });
});
