// Undo and redo as values. The laws over runs of commands stand in laws.test.ts.

import { expect, it } from 'vitest';
import { put } from '../../../tests/reference/stacked-builds.ts';
import { begin, canRedo, canUndo, did, redo, replace, undo } from './history.ts';

const [A, B, C, D] = [[put('a', 3, 0)], [put('b', 5, 0)], [put('c', 7, 0)], [put('d', 9, 0)]];

it('a drag of many moves is one step', () => {
  const dragged = replace(replace(did(begin(A), B), C), D);
  expect(dragged.now).toBe(D);
  expect(undo(dragged).now).toBe(A);
  expect(redo(undo(dragged)).now).toBe(D);
});

it('at the beginning there is no step to replace: it becomes one', () => {
  expect(undo(replace(begin(A), B)).now).toBe(A);
});

it('after an undo a new step forgets what was undone', () => {
  const again = did(undo(did(did(begin(A), B), C)), D);
  expect(canRedo(again)).toBe(false);
  expect([undo(again).now, undo(undo(again)).now]).toEqual([B, A]);
});

it('the same layout again is no step', () => {
  const history = did(begin(A), B);
  expect(did(history, B)).toBe(history);
  expect(replace(history, B)).toBe(history);
});

it('nothing to undo or redo leaves all as it is', () => {
  const history = begin(A);
  expect([canUndo(history), canRedo(history)]).toEqual([false, false]);
  expect([undo(history), redo(history)]).toEqual([history, history]);
});
