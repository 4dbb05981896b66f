import { RULERS } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { shownRuler } from './shown-ruler.ts';
import { unitsInUse } from './units-in-use.ts';

it.each(RULERS)('the settings show the units that a class with the ruler $id is shown in', ({ id }) => {
  expect(unitsInUse(null, id)).toBe(shownRuler(id, null).unit);
});

it('units chosen on the device come first, and without a class none is told', () => {
  expect(unitsInUse('in', 'mm')).toBe('in');
  expect(unitsInUse(null, null)).toBeNull();
});
