import { expect, test } from 'vitest';
import { cos, cubed, minus, num, over, PI, root, sum, sym, times } from '../kernel/formula.ts';
import { mm } from './types.ts';
import { resultOf, work } from './working.ts';

const sizes = { a: mm(3), b: mm(5), h: mm(7) };

test('a line records the sizes and results that its formula names, and no others', () => {
  const steps = work(sizes, [
    ['B', times(sym('a'), sym('b')), 'mm2'],
    ['V', times(sym('B'), sym('h')), 'mm3'],
  ]);
  expect(steps.map(({ symbol, inputs, result }) => [symbol, inputs, result])).toEqual([
    ['B', { a: mm(3), b: mm(5) }, { value: 15, unit: 'mm2' }],
    ['V', { B: { value: 15, unit: 'mm2' }, h: mm(7) }, { value: 105, unit: 'mm3' }],
  ]);
});

test('names are found in every kind of formula', () => {
  const all = sum(over(cubed(sym('a')), root(sym('b'))), minus(times(num(2), PI), cos(sym('h'))));
  const [line] = work({ ...sizes, r: mm(11) }, [['x', all, 'mm']]);
  expect(Object.keys(line?.inputs ?? {})).toEqual(['a', 'b', 'h']);
});

test('a symbol without a line is a mistake of the program', () => {
  expect(() => resultOf(work(sizes, [['B', sym('a'), 'mm']]), 'S')).toThrow(RangeError);
  expect(() => work(sizes, [['B', sym('c'), 'mm']])).toThrow(RangeError);
});
