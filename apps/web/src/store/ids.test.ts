import { ID_CHARACTERS_MOST } from '@cairnmark/formats';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { idFor } from './ids.ts';

it('is made of the name, without its accents and signs', () => {
  expect(idFor('Frailecillos, ¡los de aquí!', [], 'group')).toBe('frailecillos-los-de');
  expect(idFor('Ñandúes 3', [], 'group')).toBe('nandues-3');
  expect(idFor('☺☺', [], 'group')).toBe('group');
  expect(idFor('Constructor', [], 'group')).toBe('group');
});

it('two of one name are told apart', () => {
  expect(idFor('Terns', ['terns', 'terns-2'], 'group')).toBe('terns-3');
});

it('whatever is typed, it is an id that a class file takes, and a new one', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.array(fc.string()), (name, others) => {
      const taken = [...others, idFor(name, [], 'group')];
      const id = idFor(name, taken, 'group');
      expect(id).toMatch(/^(?!constructor$)[a-z0-9]+(?:-[a-z0-9]+)*$/);
      expect(id.length).toBeLessThanOrEqual(ID_CHARACTERS_MOST);
      expect(taken).not.toContain(id);
    }),
  );
});
