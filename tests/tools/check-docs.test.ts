import { describe, expect, it } from 'vitest';
import { docFaults } from './check-docs.ts';
import { fixture } from './fixture.ts';

const TREE = {
  'package.json': JSON.stringify({ scripts: { bench: 'x', cairnmark: 'x', test: 'x' } }),
  'node_modules/.bin/vitest': '',
  'packages/geometry/src/kernel/vec.ts': '',
  'packages/geometry/CONVENTIONS.md': '',
  'tests/bench/outline.bench.ts': '',
};

const faultsOf = (text: string, doc = 'README.md'): string[] => docFaults(fixture({ ...TREE, [doc]: text }));

describe('a mention of what is not there is told with its place', () => {
  it.each([
    ['a path', 'See `packages/geometry/src/vec.ts`.', 'there is no packages/geometry/src/vec.ts'],
    ['a folder', 'In `packages/nets/`.', 'there is no packages/nets/'],
    ['a file by its name', 'In `tolerance.ts`.', 'there is no file tolerance.ts'],
    ['a pattern', 'All of `tests/*.bench.ts`.', 'there is no tests/*.bench.ts'],
    ['a link', '[map](docs/map.md)', 'there is no docs/map.md'],
    ['a package', 'Import `@cairnmark/nets`.', 'there is no package @cairnmark/nets'],
    ['a script', 'Type `npm run fly`.', 'package.json has no script fly'],
    ['a script behind an option', 'Type `npm run -s fly -- x`.', 'package.json has no script fly'],
    ['npm start', 'Type `npm start`.', 'package.json has no script start'],
    ['a program', 'Type `npx fly`.', 'fly is no program'],
    ['a path in a command', 'Type `npx vitest run packages/nets`.', 'there is no packages/nets'],
  ])('%s', (_, text, fault) => {
    expect(faultsOf(`# Title\n\n${text}\n`)).toEqual([`README.md:3: ${fault}`]);
  });

  it('in a fence of commands', () => {
    expect(faultsOf('```sh\nnpm test\nnpm run fly\n```\n')).toEqual(['README.md:3: package.json has no script fly']);
  });
});

it.each([
  ['paths', '`packages/geometry/src/kernel/vec.ts`, `packages/geometry`, `vec.ts`, `tests/bench/*.bench.ts`'],
  ['commands', '`npm test`, `npm ci`, `npm run -s cairnmark -- score my-class.json`, `npx vitest run tests/bench`'],
  ['what a build makes', '`packages/geometry/dist/index.js`'],
  ['other code', '`g/m2`, `height / 2`, `a.b`, `{ x }`, `heightMm`, `solids/<name>.ts`'],
])('%s that are there pass', (_, text) => {
  expect(faultsOf(text)).toEqual([]);
});

it('a document of a package may name what stands beside it and in its src', () => {
  expect(faultsOf('`kernel/vec.ts`, `./CONVENTIONS.md`', 'packages/geometry/NOTES.md')).toEqual([]);
});
