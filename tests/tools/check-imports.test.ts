import { describe, expect, it } from 'vitest';
import { importFaults } from './check-imports.ts';
import { fixture } from './fixture.ts';

const PACKAGES = ['geometry', 'scoring', 'engine', 'words', 'draft'];
const ALL = Object.fromEntries(PACKAGES.map((name) => [`@cairnmark/${name}`, '*']));

/** A repository in which every package declares every other, with one file more. */
function faultsWith(path: string, text: string): string[] {
  const manifest = (more: object): string => JSON.stringify({ dependencies: { ...ALL, ...more } });
  return importFaults(
    fixture({
      'package.json': JSON.stringify({ devDependencies: { vitest: '1' } }),
      ...Object.fromEntries(PACKAGES.map((name) => [`packages/${name}/package.json`, manifest({ zod: '1' })])),
      'apps/cli/package.json': manifest({ three: '1' }),
      'apps/web/package.json': manifest({ three: '1', preact: '1' }),
      [path]: text,
    }),
  );
}

describe('an import that breaks a rule is told with its place', () => {
  it.each([
    [
      'wrong way',
      'packages/geometry/src/a.ts',
      "import { b } from '@cairnmark/engine';",
      'geometry may not import engine',
    ],
    [
      'wrong way, sideways',
      'packages/scoring/src/a.ts',
      "import '@cairnmark/geometry';",
      'scoring may not import geometry',
    ],
    [
      'a type',
      'packages/geometry/src/a.ts',
      "import type { B } from '@cairnmark/engine';",
      'geometry may not import engine',
    ],
    [
      'an inline type',
      'packages/geometry/src/a.ts',
      "type B = import('@cairnmark/engine').B;",
      'geometry may not import engine',
    ],
    [
      'export from',
      'packages/geometry/src/a.ts',
      "export * from '@cairnmark/engine';",
      'geometry may not import engine',
    ],
    ['import()', 'packages/geometry/src/a.ts', "await import('@cairnmark/engine');", 'geometry may not import engine'],
    ['from a test', 'packages/geometry/src/a.test.ts', "import '@cairnmark/engine';", 'geometry may not import engine'],
    ['no such package', 'packages/engine/src/a.ts', "import '@cairnmark/cli';", 'cli is no package'],
    [
      'a package without a line in the table',
      'packages/draft/src/a.ts',
      "import '@cairnmark/geometry';",
      'draft has no line',
    ],
    [
      'words with more than types',
      'packages/words/src/a.ts',
      "import { b } from '@cairnmark/engine';",
      'types only from engine',
    ],
    [
      'deep import',
      'packages/engine/src/a.ts',
      "import '@cairnmark/geometry/src/vec.ts';",
      'imports the inside of geometry',
    ],
    [
      'over the fence',
      'packages/engine/src/a.ts',
      "import '../../geometry/src/vec.ts';",
      'reaches into packages/geometry',
    ],
    [
      'tests over the fence',
      'tests/a.test.ts',
      "import '../packages/geometry/src/vec.ts';",
      'reaches into packages/geometry',
    ],
    ['a source that uses tests', 'packages/engine/src/a.ts', "import '../../../tests/b.ts';", 'reaches into tests'],
    ['an app in an app', 'apps/cli/src/a.ts', "import '../../web/src/b.ts';", 'reaches into apps/web'],
    ['undeclared', 'packages/engine/src/a.ts', "import 'left-out';", 'left-out is not in packages/engine/package.json'],
    ['undeclared, used by a test', 'tests/a.test.ts', "import 'left-out/deep';", 'left-out is not in package.json'],
    ['a test library in a source', 'packages/engine/src/a.ts', "import 'vitest';", 'vitest is not in packages/engine'],
    ['drawing outside the web app', 'apps/cli/src/a.ts', "import 'three';", 'only apps/web imports three'],
    ['drawing, a relative', 'packages/engine/src/a.ts', "import 'preact/hooks';", 'only apps/web imports preact'],
    ['Node in a package', 'packages/engine/src/a.ts', "import 'node:fs';", 'a package runs anywhere, without node:fs'],
    ['folder order', 'packages/geometry/src/kernel/a.ts', "import '../solids/b.ts';", 'kernel may not import solids'],
    [
      'folder order, types',
      'packages/geometry/src/outline/a.ts',
      "import type { B } from '../stack/b.ts';",
      'outline may not import stack',
    ],
    [
      'folders side by side',
      'packages/geometry/src/measures/a.ts',
      "import '../stability/b.ts';",
      'measures may not import stability',
    ],
    [
      'a folder without a line',
      'packages/geometry/src/extra/a.ts',
      "import '../kernel/b.ts';",
      'the folder extra has no line',
    ],
    ['own index', 'packages/engine/src/part/a.ts', "import '../index.ts';", 'imports the index of its own package'],
  ])('%s', (_, path, text, fault) => {
    const faults = faultsWith(path, `// first line\n${text}\n`);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(`${path}:2: `);
    expect(faults[0]).toContain(fault);
  });
});

describe('an import along the arrows passes', () => {
  it.each([
    ['down', 'packages/engine/src/a.ts', "import { b } from '@cairnmark/geometry';"],
    ['a library', 'packages/engine/src/a.ts', "import { z } from 'zod/mini';"],
    ['words with types', 'packages/words/src/a.ts', "import type { B } from '@cairnmark/engine';"],
    [
      'folder order',
      'packages/geometry/src/stack/a.ts',
      "import '../outline/b.ts'; import './c.ts'; import '../kernel/d.ts';",
    ],
    ['the index', 'packages/geometry/src/index.ts', "export * from './mesh/a.ts'; export * from './stability/b.ts';"],
    [
      'a test',
      'packages/engine/src/a.test.ts',
      "import 'vitest'; import 'node:fs'; import '../../../tests/tools/share.ts';",
    ],
    ['tests', 'tests/a.test.ts', "import '@cairnmark/engine'; import './tools/b.ts'; import 'node:fs';"],
    ['an app', 'apps/cli/src/a.ts', "import '@cairnmark/geometry'; import 'node:fs'; import './b.ts';"],
    ['the web app', 'apps/web/src/a.tsx', "import 'three'; import 'preact'; export const a = <p>one two three</p>;"],
    [
      'a text that looks like one',
      'packages/geometry/src/a.ts',
      "// import '@cairnmark/engine';\nexport const a = \"import 'three'\";",
    ],
  ])('%s', (_, path, text) => {
    expect(faultsWith(path, text)).toEqual([]);
  });
});

it('a file that does not parse stops the check', () => {
  expect(() => faultsWith('packages/engine/src/a.ts', 'import {')).toThrow(SyntaxError);
});
