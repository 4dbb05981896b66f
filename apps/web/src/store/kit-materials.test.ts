import { faultsOf } from '@cairnmark/formats';
import { expect, it } from 'vitest';
import { challengeOf, played, unplayed } from './kit-for-tests.ts';
import { changeMaterial, nameSurface, pairsOf, setPairFriction } from './kit-materials.ts';

const TALL = 'tall-light';
const frictionsOf = (record: ReturnType<typeof played>) => challengeOf(record).kit.frictions;

it('pairs are each surface with itself, with the others and with the table', () => {
  const [first, second] = pairsOf(challengeOf(unplayed()).kit);
  const surfaces = new Set(challengeOf(unplayed()).kit.kinds.map(({ surface }) => surface));
  expect(surfaces.size).toBe(2);
  expect(pairsOf(challengeOf(unplayed()).kit)).toHaveLength(5);
  expect([first?.[0], second?.[0]]).toEqual(['paper', 'paper']);
});

it('a friction of a pair is set in either order, changed and taken out', () => {
  const set = setPairFriction(TALL, ['paper', 'table'], 0.45)(unplayed());
  const changed = setPairFriction(TALL, ['table', 'paper'], 0.5)(set);
  expect(frictionsOf(changed)).toEqual([{ between: ['table', 'paper'], friction: 0.5 }]);
  expect(frictionsOf(setPairFriction(TALL, ['paper', 'table'], null)(changed))).toEqual([]);
});

it('frictions go along with a surface that is renamed, and stay with one that others have still', () => {
  const all = challengeOf(unplayed())
    .kit.kinds.filter(({ surface }) => surface === 'paper')
    .map(({ id }) => id);
  const set = setPairFriction(TALL, ['paper', 'table'], 0.45)(unplayed());
  const renamed = nameSurface(TALL, all, 'card')(set);
  expect(frictionsOf(renamed)).toEqual([{ between: ['card', 'table'], friction: 0.45 }]);
  expect(faultsOf('class', renamed)).toEqual([]);
  const one = nameSurface(TALL, ['cube'], 'card')(set);
  expect(frictionsOf(one)).toEqual([{ between: ['paper', 'table'], friction: 0.45 }]);
});

it('of two pairs that become one by a new name, the first stays', () => {
  const some = nameSurface(TALL, ['cube'], 'card')(unplayed());
  const twice = setPairFriction(TALL, ['paper', 'table'], 0.3)(setPairFriction(TALL, ['card', 'table'], 0.2)(some));
  const joined = nameSurface(TALL, ['cube'], 'paper')(twice);
  expect(frictionsOf(joined)).toEqual([{ between: ['paper', 'table'], friction: 0.2 }]);
  expect(faultsOf('class', joined)).toEqual([]);
});

it('a kit that was built with keeps its materials', () => {
  const record = played();
  expect(changeMaterial(TALL, ['cube'], (kind) => ({ ...kind, friction: 1 }))(record)).toBe(record);
  expect(nameSurface(TALL, ['cube'], 'wax')(record)).toBe(record);
  expect(setPairFriction(TALL, ['paper', 'table'], 1)(record)).toBe(record);
});
