import { describe, expect, it } from 'vitest';
import type { Key, KeyScene } from './use-build-keys.ts';
import { actionOf } from './use-build-keys.ts';

const SCENE: KeyScene = { kinds: ['cube', 'cone'], count: 3, picked: 1, stepMm: 5, smallStepMm: 1 };
const press = (key: string, held: Partial<Key> = {}, scene: Partial<KeyScene> = {}) =>
  actionOf({ key, shiftKey: false, ctrlKey: false, ...held }, { ...SCENE, ...scene });

describe('a key', () => {
  it.each([
    ['2', { do: 'add', kind: 'cone' }],
    ['ArrowLeft', { do: 'shift', pieces: [1], xMm: -5, yMm: 0 }],
    ['ArrowUp', { do: 'shift', pieces: [1], xMm: 0, yMm: 5 }],
    ['t', { do: 'turn-by', piece: 1, degrees: 15 }],
    ['L', { do: 'lay-next', piece: 1 }],
    ['PageUp', { do: 'reorder', piece: 1, to: 2 }],
    ['PageDown', { do: 'reorder', piece: 1, to: 0 }],
    ['Delete', { do: 'take-off', piece: 1 }],
  ])('%s gives its command', (key, command) => {
    expect(press(key)).toEqual({ do: 'command', command });
  });

  it('with Shift makes small steps', () => {
    expect(press('ArrowDown', { shiftKey: true })).toEqual({
      do: 'command',
      command: { do: 'shift', pieces: [1], xMm: 0, yMm: -1 },
    });
    expect(press('T', { shiftKey: true })).toMatchObject({ command: { degrees: 1 } });
  });

  it('with Control undoes and redoes, and does nothing else', () => {
    expect(press('z', { ctrlKey: true })).toEqual({ do: 'undo' });
    expect(press('Z', { ctrlKey: true, shiftKey: true })).toEqual({ do: 'redo' });
    expect(press('c', { ctrlKey: true })).toBeNull();
    expect(press('2', { ctrlKey: true })).toBeNull();
  });

  it('goes round the pieces', () => {
    expect(press('n', {}, { picked: 2 })).toEqual({ do: 'pick', piece: 0 });
    expect(press('b', {}, { picked: 0 })).toEqual({ do: 'pick', piece: 2 });
    expect(press('n', {}, { picked: null, count: 0 })).toBeNull();
  });

  it('about a piece does nothing when none is picked, or at the end of the tower', () => {
    expect(press('ArrowLeft', {}, { picked: null })).toBeNull();
    expect(press('PageUp', {}, { picked: 2 })).toBeNull();
    expect(press('PageDown', {}, { picked: 0 })).toBeNull();
    expect(press('9')).toBeNull();
  });
});
