import fc from 'fast-check';
import { expect, it } from 'vitest';
import { freshSeed } from '../../../../tests/tools/share.ts';
import { fileName } from './file-name.ts';

it.each([
  ['Puffins, Tall Light, try 2', 'puffins-tall-light-try-2'],
  ['Pirámide de 3/4" (alta)', 'piramide-de-34-alta'],
  ['  a   b ', 'a-b'],
  ['锥', 'cairnmark'],
  ['../../etc', 'etc'],
])('%s becomes %s', (name, file) => expect(fileName(name)).toBe(file));

const SEED = freshSeed('file names');

it(`whatever people type, a name is of plain ASCII and not empty [seed ${SEED}]`, () => {
  const typed = fc.array(fc.integer({ min: 1, max: 0x10ffff })).map((codes) => String.fromCodePoint(...codes));
  const property = fc.property(typed, (name) => /^[\w-]+$/.test(fileName(name)));
  fc.assert(property, { seed: SEED, numRuns: 300 });
});
