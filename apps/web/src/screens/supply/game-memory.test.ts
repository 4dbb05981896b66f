import { expect, it } from 'vitest';
import { inRound, readGame, withCarrier } from './game-memory.ts';

const GAME = { round: 2, carriers: { terns: '3' }, clock: { fullMs: 9000, leftMs: 5000, endsAtMs: null, turns: 0 } };

it('what was kept is read back', () => {
  expect(readGame(JSON.parse(JSON.stringify(GAME)))).toEqual(GAME);
  expect(readGame({ ...GAME, clock: { ...GAME.clock, endsAtMs: 7000 } })?.clock.endsAtMs).toBe(7000);
});

it.each([
  ['nothing', null],
  ['a text', 'game'],
  ['no round', { ...GAME, round: 0 }],
  ['half a round', { ...GAME, round: 1.5 }],
  ['more rounds than a record may hold', { ...GAME, round: 1001 }],
  ['carriers that are no texts', { ...GAME, carriers: { terns: 3 } }],
  ['no clock', { ...GAME, clock: null }],
  ['a clock below nought', { ...GAME, clock: { ...GAME.clock, leftMs: -1 } }],
])('%s is not of use', (_, kept) => {
  expect(readGame(kept)).toBeNull();
});

it('each group has its own carrier, or none', () => {
  const two = withCarrier(GAME, 'eiders', 'runner');
  expect(two.carriers).toEqual({ terns: '3', eiders: 'runner' });
  expect(withCarrier(two, 'terns', null).carriers).toEqual({ eiders: 'runner' });
});

it('rounds are counted from 1, as far as a record can hold them', () => {
  expect([0, 7, 2000].map((round) => inRound(GAME, round).round)).toEqual([1, 7, 1000]);
});
