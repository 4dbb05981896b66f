// The browser of the browser tests: CHROME_PATH, then what PATH holds, then the usual places, then the one that
// playwright-core downloaded. Where there is none, one is installed. Needs Node alone until it comes to the download.

import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

/**
 * What the search asks of a machine.
 * @typedef {object} Machine
 * @property {string} platform as in process.platform
 * @property {Readonly<Record<string, string | undefined>>} env
 * @property {(path: string) => boolean} runs whether a browser starts from there
 * @property {boolean} mayUseApt Debian, and we are root
 * @property {() => string} downloaded where playwright-core keeps its own browser, downloaded or not
 */

/**
 * A way to get a browser: what is said, and the commands.
 * @typedef {{ says: string, commands: readonly (readonly string[])[] }} Way
 */

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

const USUAL = ['/usr/lib/chromium/chromium', '/opt/google/chrome/chrome', '/snap/bin/chromium'];
const USUAL_MAC = ['Google Chrome', 'Chromium'].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
const USUAL_WINDOWS = ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe'];

/**
 * The browser to use, or undefined. Throws an Error with a sentence when CHROME_PATH names none.
 * @param {Machine} machine
 * @returns {string | undefined}
 */
export function findBrowser(machine) {
  const named = machine.env['CHROME_PATH'];
  if (named !== undefined && named !== '') {
    if (machine.runs(named)) return named;
    throw new Error(`CHROME_PATH says ${named}, but no browser starts from there.`);
  }
  const found = placesOn(machine).find(machine.runs);
  if (found !== undefined) return found;
  const own = machine.downloaded();
  return machine.runs(own) ? own : undefined;
}

/**
 * The browser to use, installed when there was none. Throws an Error with a sentence when that fails.
 * @param {Machine} machine
 * @param {(way: Way) => void} install
 * @returns {string}
 */
export function getBrowser(machine, install) {
  const found = findBrowser(machine);
  if (found !== undefined) return found;
  for (const way of waysOn(machine)) {
    install(way);
    const installed = findBrowser(machine);
    if (installed !== undefined) return installed;
  }
  throw new Error(NONE);
}

export const NONE =
  'The browser tests need Chromium or Chrome. None was found on this machine, and none could be installed. ' +
  'Install one, or set CHROME_PATH to the program of the one you have, and run this again.';

/**
 * @param {Machine} machine
 * @returns {string[]}
 */
function placesOn({ platform, env }) {
  if (platform === 'darwin') return USUAL_MAC;
  if (platform === 'win32') {
    const homes = [env['PROGRAMFILES'], env['PROGRAMFILES(X86)'], env['LOCALAPPDATA']];
    return USUAL_WINDOWS.flatMap((place) => homes.flatMap((home) => (home ? [`${home}\\${place}`] : [])));
  }
  const folders = (env['PATH'] ?? '').split(':').filter((folder) => folder !== '');
  return [...NAMES.flatMap((name) => folders.map((folder) => `${folder}/${name}`)), ...USUAL];
}

/**
 * @param {Machine} machine
 * @returns {Way[]}
 */
function waysOn({ mayUseApt }) {
  const apt = {
    says: 'Installing Chromium with apt-get (once) ...',
    commands: [
      ['apt-get', 'update'],
      ['apt-get', 'install', '--yes', '--no-install-recommends', 'chromium'],
    ],
  };
  const download = {
    says: 'Downloading the Chromium of playwright-core (once) ...',
    commands: [['npx', 'playwright-core', 'install', '--no-progress', 'chromium']],
  };
  return mayUseApt ? [apt, download] : [download];
}

/**
 * This machine, for the clone at `root`.
 * @param {string} root
 * @returns {Machine}
 */
export function thisMachine(root) {
  const { platform, env } = process;
  return {
    platform,
    env,
    runs: (path) => existsSync(path) && (platform === 'win32' || startsAt(path)),
    mayUseApt: process.getuid?.() === 0 && isDebian(),
    downloaded: () => createRequire(join(root, 'package.json'))('playwright-core').chromium.executablePath(),
  };
}

/**
 * Some systems put a program of that name there which only says that the browser is to be had elsewhere.
 * @param {string} path
 */
function startsAt(path) {
  return spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 30_000 }).status === 0;
}

function isDebian() {
  try {
    return /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'));
  } catch {
    return false;
  }
}
