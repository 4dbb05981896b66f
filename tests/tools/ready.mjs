// Gets a clone ready to run: installs when package-lock.json has changed since the last time, then compiles what has
// changed. Needs Node alone, for it runs before anything is installed. It speaks on the error stream only.
//
//   node tests/tools/ready.mjs            install
//   node tests/tools/ready.mjs build      install, then compile into the dist folders
//   node tests/tools/ready.mjs browser    install, then find a browser for the browser tests, or install one
//   node tests/tools/ready.mjs poppler    install, then find the readers of PDF, or install them, or say that there are none
//   node tests/tools/ready.mjs pictures   install, then find real photographs and a second finder of markers, or install them, or say so
//   node tests/tools/ready.mjs tests      all three

import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { getBrowser, thisMachine } from './browser.mjs';
import { withLock } from './lock.mjs';
import { getPictures } from './pictures.mjs';
import { getPoppler } from './poppler.mjs';

/** @typedef {(typeof WISHES)[number]} Wish */
const WISHES = /** @type {const} */ (['install', 'build', 'browser', 'poppler', 'pictures', 'tests']);

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    ready(ROOT, wish(process.argv[2]));
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
    process.exitCode = 1;
  }
}

/**
 * Installs what is lacking in the clone at `root`, and compiles or gets a browser, readers of PDF or pictures when asked to. Of several that
 * run at once one works and the others wait. Throws an Error whose message is a sentence for the person at the terminal.
 * @param {string} root
 * @param {Wish} wanted
 */
export function ready(root, wanted) {
  const lacking = nodeTooOld(JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')), process.versions.node);
  if (lacking !== undefined) throw new Error(lacking);
  withLock(join(root, '.cache'), () => {
    if (!isInstalled(root)) install(root);
    if (wanted === 'build') build(root);
    const [machine, get] = [thisMachine(root), (/** @type {import('./browser.mjs').Way} */ way) => run(root, way)];
    if (wanted === 'browser' || wanted === 'tests') getBrowser(machine, get);
    if (wanted === 'poppler' || wanted === 'tests') tell(getPoppler(machine, get));
    if (wanted === 'pictures' || wanted === 'tests') tell(getPictures(machine, get));
  });
}

/**
 * @param {string | undefined} word
 * @returns {Wish}
 */
function wish(word = 'install') {
  const known = WISHES.find((one) => one === word);
  if (known !== undefined) return known;
  throw new Error(`ready.mjs cannot ${word}: it can install, build, get a browser, readers of PDF, or pictures.`);
}

/** @param {string | undefined} sentence */
function tell(sentence) {
  if (sentence !== undefined) process.stderr.write(`${sentence}\n`);
}

/**
 * A sentence when `version` is below the one that package.json asks for (engines.node, written ">=20.19").
 * @param {{ engines: { node: string } }} manifest
 * @param {string} version
 * @returns {string | undefined}
 */
export function nodeTooOld(manifest, version) {
  const wanted = manifest.engines.node.replace('>=', '');
  const [major = 0, minor = 0] = wanted.split('.').map(Number);
  const [hasMajor = 0, hasMinor = 0] = version.split('.').map(Number);
  if (hasMajor > major || (hasMajor === major && hasMinor >= minor)) return undefined;
  return `Cairnmark needs Node ${wanted} or newer; this is Node ${version}.`;
}

/**
 * Whether node_modules holds what package-lock.json now asks for.
 * @param {string} root
 */
function isInstalled(root) {
  const stamp = stampFile(root);
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === lockfileHash(root);
}

/** @param {string} root */
function markInstalled(root) {
  writeFileSync(stampFile(root), lockfileHash(root));
}

/** @param {string} root */
function install(root) {
  process.stderr.write('Installing the packages in package-lock.json (about a minute, once) ...\n');
  const { status } = spawnSync('npm', ['ci'], { ...quietOutput(root), shell: process.platform === 'win32' });
  if (status !== 0) throw new Error('npm ci failed, so nothing was started. Its message stands above.');
  markInstalled(root);
}

/** @param {string} root */
function build(root) {
  const compiler = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
  const { status } = spawnSync(process.execPath, [compiler, '-b'], quietOutput(root));
  if (status !== 0) throw new Error('The sources do not compile, so nothing was started. The faults stand above.');
}

/**
 * Runs a way to get a browser, up to the first command that fails; whether there is one now is looked at afterwards.
 * @param {string} root
 * @param {import('./browser.mjs').Way} way
 */
function run(root, { says, commands }) {
  process.stderr.write(`${says}\n`);
  commands.every(([program = '', ...words]) => {
    const { status } = spawnSync(program, words, { ...quietOutput(root), shell: process.platform === 'win32' });
    return status === 0;
  });
}

/**
 * Everything a child prints goes to the error stream: standard output belongs to the program that runs next.
 * @param {string} root
 * @returns {{ cwd: string, stdio: ['ignore', 2, 2] }}
 */
function quietOutput(root) {
  return { cwd: root, stdio: ['ignore', 2, 2] };
}

/** @param {string} root */
function stampFile(root) {
  return join(root, 'node_modules', '.cairnmark-ready');
}

/** @param {string} root */
function lockfileHash(root) {
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
}
