// Who may import whom. Neither workspaces nor TypeScript guard the direction of imports, so this check does: every
// import of every source and test, types included, with no exemption. The tables below are the architecture.

import { posix } from 'node:path';
import { isTest, isTypeScript, listFiles, readText } from './files.ts';
import type { Import } from './imports-of.ts';
import { importsOf } from './imports-of.ts';

const BELOW_WORDS = ['geometry', 'scoring', 'engine', 'editing', 'nets', 'photo', 'formats'];

/** Package or app -> the packages it may import. 'any': all packages; no app is a package. */
const MAY_IMPORT: Readonly<Record<string, readonly string[] | 'any'>> = {
  geometry: [],
  scoring: [],
  nets: ['geometry'],
  photo: ['geometry'],
  editing: ['geometry'],
  engine: ['geometry', 'scoring'],
  formats: ['geometry', 'scoring', 'engine'],
  words: BELOW_WORDS,
  print: ['nets', 'photo', 'formats', 'words', 'geometry', 'scoring', 'engine'],
  api: ['formats'],
  demo: ['formats'],
  server: ['api', 'formats', 'engine', 'words', 'demo'],
  web: 'any',
  cli: 'any',
};

/** These take types from other packages, and nothing that runs. */
const TYPES_ONLY = ['words'];

/**
 * Folder of a package -> the folders beside it that it may import. A stack needs the outlines of contact areas, so
 * `stack` may import `outline`, not the other way round.
 */
const FOLDERS: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  geometry: {
    kernel: [],
    solids: ['kernel'],
    outline: ['kernel', 'solids'],
    stack: ['kernel', 'solids', 'outline'],
    stability: ['kernel', 'solids', 'outline', 'stack'],
    measures: ['kernel', 'solids', 'outline', 'stack'],
    mesh: ['kernel', 'solids'],
  },
};

/** Libraries that draw, by the first word of their name; they belong to one app. */
const DRAWING = ['preact', 'three'];
const DRAWING_APP = 'web';

/** Every import below `root` that breaks a rule, as lines "file:line: what is wrong". */
export function importFaults(root: string): string[] {
  const files = listFiles(root).filter(isTypeScript);
  const declared = declaredPackages(root);
  return files.flatMap((path) =>
    importsOf(path, readText(root, path)).flatMap((one) => {
      const fault = faultOf(path, one, declared);
      return fault === undefined ? [] : [`${path}:${one.line}: ${fault}`];
    }),
  );
}

function faultOf(path: string, one: Import, declared: Declared): string | undefined {
  if (one.from.startsWith('.')) return relativeFault(path, posix.join(posix.dirname(path), one.from));
  if (one.from.startsWith('@cairnmark/')) return packageFault(path, one, declared);
  return libraryFault(path, one.from, declared);
}

function relativeFault(path: string, target: string): string | undefined {
  const [here, there] = [placeOf(path), placeOf(target)];
  if (here.home !== there.home) {
    // The settings of the test run stand at the root, where vitest looks for them.
    if (there.home === 'tests' && (isTest(path) || here.home === '')) return undefined;
    return `reaches into ${there.home || 'the root'}; import a package by its name`;
  }
  if (target === `${here.home}/src/index.ts`) return 'imports the index of its own package';
  const order = FOLDERS[here.unit];
  if (order === undefined || here.folder === there.folder || here.folder === '') return undefined;
  const allowed = order[here.folder];
  if (allowed === undefined) return `the folder ${here.folder} has no line in the table of folders`;
  return allowed.includes(there.folder)
    ? undefined
    : `${here.folder} may not import ${there.folder || 'the top of src'}`;
}

function packageFault(path: string, one: Import, declared: Declared): string | undefined {
  const { home, unit } = placeOf(path);
  const [name = '', ...deeper] = one.from.replace('@cairnmark/', '').split('/');
  if (deeper.length > 0) return `imports the inside of ${name}; a package is its index alone`;
  if (!declared.has(`packages/${name}`)) return `${name} is no package`;
  if (home === 'tests') return undefined;
  const allowed = MAY_IMPORT[unit];
  if (allowed === undefined) return `${unit} has no line in the table of imports`;
  if (allowed !== 'any' && !allowed.includes(name)) return `${unit} may not import ${name}`;
  if (TYPES_ONLY.includes(unit) && !one.typesOnly) return `${unit} may import types only from ${name}`;
  return undeclared(one.from, home, isTest(path), declared);
}

function libraryFault(path: string, from: string, declared: Declared): string | undefined {
  const { home, unit } = placeOf(path);
  if (from.startsWith('node:')) {
    return home.startsWith('packages/') && !isTest(path) ? `a package runs anywhere, without ${from}` : undefined;
  }
  const [first = '', second = ''] = from.split('/');
  const name = first.startsWith('@') ? `${first}/${second}` : first;
  const draws = DRAWING.some((word) => name === word || name.startsWith(`${word}-`));
  if (draws && unit !== DRAWING_APP) return `only apps/${DRAWING_APP} imports ${name}`;
  return undeclared(name, home, isTest(path), declared);
}

/** Sources use what their own package.json names; tests also what the one at the root names. */
function undeclared(name: string, home: string, test: boolean, declared: Declared): string | undefined {
  if (declared.get(home)?.has(name) || (test && declared.get('')?.has(name))) return undefined;
  return `${name} is not in ${posix.join(home === 'tests' ? '' : home, 'package.json')}`;
}

/** Where a file stands: home "packages/geometry", unit "geometry", folder "solids" ('' at the top of src). */
function placeOf(path: string): { home: string; unit: string; folder: string } {
  const [top = '', unit = '', src = '', ...inside] = path.split('/');
  if (top !== 'packages' && top !== 'apps') return { home: top === 'tests' ? 'tests' : '', unit: top, folder: '' };
  return { home: `${top}/${unit}`, unit, folder: src === 'src' && inside.length > 1 ? (inside[0] ?? '') : '' };
}

/** Home ('' is the root) -> the names in its package.json. */
type Declared = ReadonlyMap<string, ReadonlySet<string>>;

function declaredPackages(root: string): Declared {
  const manifests = listFiles(root).filter((path) => posix.basename(path) === 'package.json');
  return new Map(
    manifests.map((path) => {
      const { dependencies = {}, devDependencies = {} } = JSON.parse(readText(root, path));
      const home = posix.dirname(path) === '.' ? '' : posix.dirname(path);
      return [home, new Set([...Object.keys(dependencies), ...Object.keys(devDependencies)])];
    }),
  );
}
