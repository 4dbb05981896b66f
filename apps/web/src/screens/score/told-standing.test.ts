import type { Standing } from '@cairnmark/scoring';
import { expect, it } from 'vitest';
import { NEW_BOARD } from '../../store/board-state.ts';
import { toldStanding } from './told-standing.ts';

const at = (group: string, place: number | null): Standing => ({ group, place }) as Standing;
const ALL = [at('puffins', 1), at('terns', 2), at('gannets', 2), at('fulmars', 4), at('eiders', null)];
const told = (group: string, board: Parameters<typeof toldStanding>[3]) =>
  toldStanding(ALL.find((one) => one.group === group) ?? null, ALL, 'tall-light', board)?.place;

it('the card tells the place while the Board shows all of them', () => {
  expect(told('puffins', NEW_BOARD)).toBe(1);
});

it('the card tells no place while the Board hides places', () => {
  expect(told('puffins', { ...NEW_BOARD, placesHidden: true })).toBeUndefined();
});

it('the card tells a place only once the Board has come to it', () => {
  const shown = (places: number) => ({ ...NEW_BOARD, reveal: { 'tall-light': places } });
  expect(told('puffins', shown(2))).toBeUndefined();
  expect(told('terns', shown(2))).toBe(2);
  expect(told('puffins', shown(3))).toBe(1);
  expect(told('puffins', { ...NEW_BOARD, reveal: {} })).toBeUndefined();
});
