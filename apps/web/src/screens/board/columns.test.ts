import { demoClass } from '@cairnmark/demo';
import { describe, expect, it } from 'vitest';
import { besideOf } from './columns.ts';
import type { Staged } from './for-tests.ts';
import { staged } from './for-tests.ts';
import { besideText, keyText, notesOf, outText, partText } from './texts.ts';

const TALL = staged(demoClass(), 'tall-light');
const NARROW = staged(demoClass(), 'narrow-rock');
const WALL = staged(demoClass(), 'harbour-wall');

const named = ({ scene, lines }: Staged, group: string) => {
  const line = lines.find((one) => one.group === group);
  if (line === undefined) throw new RangeError(`no line of ${group}`);
  return { scene, line, first: scene.challenge.ranking.first };
};

describe('the columns of values', () => {
  it('have what the ranking asks for first, and beside it what parts the places', () => {
    const { scene, line, first } = named(NARROW, 'terns');
    const beside = besideOf(scene.challenge);
    expect(beside).toEqual({ kind: 'tie-break', key: scene.challenge.ranking.tieBreaks[0] });
    expect(keyText(line, first, 0, scene)).toBe('37.9 cm');
    expect(beside === null ? '' : besideText(line, beside, 0, scene)).toBe('10.83 cm²');
  });

  it('have the points beside a measure, and points without the word', () => {
    const tall = named(TALL, 'puffins');
    expect(besideOf(tall.scene.challenge)).toEqual({ kind: 'points' });
    expect(besideText(tall.line, { kind: 'points' }, 1, tall.scene)).toBe('37.0');
    const wall = named(WALL, 'fulmars');
    expect(keyText(wall.line, wall.first, 0, wall.scene)).toBe('54');
  });
});

describe('what is told of a row', () => {
  it('which try counts, and that a person decided', () => {
    const puffins = named(TALL, 'puffins');
    expect(notesOf(puffins.line, puffins.scene)).toEqual(['best of 2 tries']);
    const petrels = named(TALL, 'petrels');
    expect(notesOf(petrels.line, petrels.scene)).toEqual(['height: decided by a person']);
  });

  it('that further tries wait to be confirmed; they are not among those it is the best of', () => {
    const { line, scene } = named(TALL, 'puffins');
    const [pattern] = line.tries;
    const open = (attempt: string) => ({ ...pattern!, attempt, confirmedBy: null });
    expect(notesOf({ ...line, tries: [...line.tries, open('x')] }, scene)).toEqual([
      'best of 2 tries',
      '1 more try, not confirmed yet',
    ]);
    expect(notesOf({ ...line, tries: [...line.tries, open('x'), open('y')] }, scene)).toEqual([
      'best of 2 tries',
      '2 more tries, not confirmed yet',
    ]);
  });

  it('that a build which fell counts all the same, where the challenge says so', () => {
    const record = demoClass();
    const challenges = record.challenges.map((one) => ({ ...one, fallen: { counts: 'as-measured' } as const }));
    const { line, scene } = named(staged({ ...record, challenges }, 'tall-light'), 'eiders');
    expect(line.place).not.toBeNull();
    expect(notesOf(line, scene)).toEqual(['Fell after 2 seconds. It counts as it was measured.']);
  });

  it('why it takes no place', () => {
    const { line, scene } = named(WALL, 'petrels');
    expect(outText(line, scene)).toBe('Absent: no result. That is not 0.');
  });

  it('what its bar is made of', () => {
    const { scene } = named(WALL, 'fulmars');
    const texts = scene.challenge.points.map(({ id }) => partText(`row:${id}`, scene));
    expect(texts[0]).toBe('courtyard, 2 for every 10 cm²');
    expect(texts.at(-1)).toBe('Craft, 2 each');
  });
});
