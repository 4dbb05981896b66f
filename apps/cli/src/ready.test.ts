import { READY_IDS } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import type { LaidPiece } from '@cairnmark/geometry';
import { wordsFor } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, classOf, group, KIT, laid, numbersOnly } from '../../../tests/reference/small-class.ts';
import { tried } from './tried.ts';

describe('ready, without an id', () => {
  it('lists every challenge with its grades, labels, rules, points and ranking, in both languages', async () => {
    for (const language of ['en', 'es'] as const) {
      const { code, out, err } = await tried(['ready', '--lang', language, '--pieces', '7']);
      expect([code, err]).toEqual([0, '']);
      const { ready } = wordsFor(language).names;
      const titles = out.split('\n').filter((line) => /^\S/.test(line));
      expect(titles).toEqual(READY_IDS.map((id) => `${ready[id]}: ${id}`));
      expect(out).not.toMatch(/[{}]|undefined|null|NaN/);
    }
    const { out } = await tried(['ready', '--pieces', '7']);
    expect(out).toContain('  For grades 2 and 3.\n  Standards: 2.MD.A.1');
    expect(out).toContain('  Rules: exactly 7 pieces (must be kept).\n');
    expect(out).toContain('; stands up to a tilt of at least 15° (must be kept).\n');
    expect(out).toContain('  Points: Kinds of piece: 1 point for every 1 kind; ');
    expect(out).toContain('  Ranking: height to width, more is better, rounded to 0.1; then height');
  });
});

describe('ready, with an id', () => {
  it('scores every drawn build of the demo under it', async () => {
    const { code, out, err } = await tried(['ready', 'tallest']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Skerry Light\nAll data of this class is invented\.\n\nTallest\n/);
    // Of the puffins' four drawn builds the tower of 379 mm is the tallest of five pieces; read in whole cm.
    expect(out).toMatch(/1st +Puffins +38 cm .*best of 4 attempts/);
  });

  it('ranks a class under each of them, in both languages', async () => {
    const attempts = [attempt(), attempt({ id: 'b', group: 'puffins', layout: laid('cube', 'slab', 'slab') })];
    const files = { 'c.json': encode('class', classOf({ attempts })) };
    for (const id of READY_IDS) {
      for (const language of ['en', 'es'] as const) {
        const args = ['ready', id, 'c.json', '--pieces', '3', '--rows', '--lang', language];
        const { code, out, err } = await tried(args, files);
        expect([id, code, err]).toEqual([id, 0, '']);
        expect(out).toContain(`\n${wordsFor(language).names.ready[id]}\n`);
        expect(out).not.toMatch(/[{}]|undefined|null|NaN/);
      }
    }
  });

  it('keeps the sizes of the groups, what was read and what was decided, and drops what was for the other challenge', async () => {
    const judged = challenge({
      criteria: [{ id: 'idea', name: 'Idea' }],
      requirements: [{ id: 'no-tape', kind: 'judged', text: 'No tape', consequence: { kind: 'must' } }],
    });
    const decided = {
      measure: 'height',
      value: 150,
      by: 'Ms Reid',
      reason: 'read again',
      at: '2026-03-05T10:30:00+01:00',
    };
    const record = classOf({
      challenges: [judged],
      groups: [group('terns', { slab: { length: 60, width: 40, height: 50 } }), group('puffins')],
      attempts: [
        attempt({
          answers: { 'no-tape': { kept: false } },
          judged: [{ judge: 'Ada', criterion: 'idea', mark: 3 }],
          adjustments: [{ points: 7, by: 'Ms Reid', reason: 'helped', at: decided.at }],
        }),
        attempt({ id: 'b', group: 'puffins', layout: laid('cube', 'slab'), decisions: [decided] }),
        attempt({ id: 'c', group: 'puffins', layout: numbersOnly('cube', 'slab') }),
      ],
    });
    const { out, code } = await tried(['ready', 'tallest', 'c.json', '--pieces', '2'], {
      'c.json': encode('class', record),
    });
    expect(code).toBe(0);
    // The terns' slab is 50 high: 100 mm.
    expect(out).toMatch(/1st +puffins +15 cm *\n +2nd +terns +10 cm *\n/);
    expect(out).toContain('1 build was left out: it has no drawing, or another kit.');
    expect(out).not.toContain('helped');
  });

  it('leaves out builds of another kit', async () => {
    const wood = challenge({ id: 'wood', kit: { ...KIT, id: 'wood' } });
    const attempts = ['a', 'b', 'c'].map((id) => attempt({ id, challenge: id === 'a' ? 'tall' : 'wood' }));
    const text = encode('class', classOf({ challenges: [challenge(), wood], attempts }));
    const { out } = await tried(['ready', 'tallest', 'c.json', '--lang', 'es'], { 'c.json': text });
    expect(out).toContain('No entran 2 construcciones: no tienen dibujo, o tienen otro juego de piezas.');
  });

  it('tells what is wrong with the class at its place in the file', async () => {
    const cube = (xMm: number): LaidPiece => ({ kind: 'cube', resting: 'base', xMm, yMm: 0, turnRad: 0, on: 'table' });
    const attempts = [
      attempt({ id: 'a', layout: numbersOnly('cube') }),
      attempt({ id: 'b', layout: { kind: 'laid-out', pieces: [cube(0), cube(43)] } }),
    ];
    const { code, err } = await tried(['ready', 'tallest', 'c.json'], {
      'c.json': encode('class', classOf({ attempts })),
    });
    expect(code).toBe(1);
    expect(err).toMatch(/^c\.json: attempts 2, layout, pieces 2, on: This piece runs 7 mm into piece 1\./);
  });

  it('needs a kit', async () => {
    const files = { 'c.json': encode('class', classOf({ challenges: [] })) };
    expect(await tried(['ready', 'c.json'], files)).toMatchObject({
      code: 1,
      err: 'This class has no challenge, so there is no kit.\n',
    });
  });
});

describe('ready, not understood', () => {
  it('names the challenges that there are, and a number that would do', async () => {
    const { code, out, err } = await tried(['ready', 'widest', '--pieces', 'some']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(
      `There is no ready challenge "widest". Use one of: ${READY_IDS.join(', ')}.\nThe number of pieces cannot be "some". Use a whole number from 1 on, such as 5.\n`,
    );
    expect((await tried(['ready', 'tallest', 'widest'])).err).toContain('"widest"');
    for (const pieces of ['0', '2.5', ' ']) expect((await tried(['ready', '--pieces', pieces])).code).toBe(2);
  });
});
