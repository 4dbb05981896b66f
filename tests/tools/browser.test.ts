import { expect, it } from 'vitest';
import type { Machine } from './browser.mjs';
import { findBrowser, getBrowser, NONE } from './browser.mjs';

const DOWNLOADED = '/cache/chrome';

/** A machine on which a browser starts from each of the places in `browsers`. */
function machine(browsers: readonly string[], other: Partial<Machine> = {}): Machine {
  return {
    platform: 'linux',
    env: { PATH: '/usr/local/bin:/usr/bin' },
    runs: (path) => browsers.includes(path),
    mayUseApt: false,
    downloaded: () => DOWNLOADED,
    ...other,
  };
}

it.each([
  ['the one on PATH', ['/usr/bin/google-chrome', DOWNLOADED], '/usr/bin/google-chrome'],
  ['Chromium before Chrome', ['/usr/local/bin/google-chrome', '/usr/bin/chromium'], '/usr/bin/chromium'],
  ['the earlier folder of PATH', ['/usr/bin/chromium', '/usr/local/bin/chromium'], '/usr/local/bin/chromium'],
  ['a usual place', ['/opt/google/chrome/chrome', DOWNLOADED], '/opt/google/chrome/chrome'],
  ['the downloaded one', [DOWNLOADED], DOWNLOADED],
  ['none', [], undefined],
])('takes %s', (_, browsers, chosen) => {
  expect(findBrowser(machine(browsers))).toBe(chosen);
});

it('takes the one that CHROME_PATH names before all others', () => {
  const env = { CHROME_PATH: '/my/chrome', PATH: '/usr/bin' };
  expect(findBrowser(machine(['/usr/bin/chromium', '/my/chrome'], { env }))).toBe('/my/chrome');
});

it('says so when CHROME_PATH names none, and takes no other', () => {
  const env = { CHROME_PATH: '/my/chrome', PATH: '/usr/bin' };
  const both = machine(['/usr/bin/chromium'], { env });
  expect(() => findBrowser(both)).toThrow('CHROME_PATH says /my/chrome, but no browser starts from there.');
});

it.each([
  ['win32', { PROGRAMFILES: 'D:\\P' }, 'D:\\P\\Google\\Chrome\\Application\\chrome.exe'],
  ['darwin', {}, '/Applications/Chromium.app/Contents/MacOS/Chromium'],
])('knows the places of %s', (platform, env, place) => {
  expect(findBrowser(machine([place], { platform, env }))).toBe(place);
});

it('on a Debian as root apt-get comes first, the download only when that failed', () => {
  const browsers: string[] = [];
  const ways: string[] = [];
  const found = getBrowser(machine(browsers, { mayUseApt: true, runs: (path) => browsers.includes(path) }), (way) => {
    ways.push(way.commands.map(([program]) => program).join());
    if (ways.length === 2) browsers.push(DOWNLOADED);
  });
  expect([found, ways]).toEqual([DOWNLOADED, ['apt-get,apt-get', 'npx']]);
});

it('installs nothing when there is one, and by one way alone when that is enough', () => {
  const none = () => {
    throw new RangeError('nothing is to be installed');
  };
  expect(getBrowser(machine(['/usr/bin/chromium']), none)).toBe('/usr/bin/chromium');
  const browsers: string[] = [];
  const bare = machine([], { mayUseApt: true, runs: (path) => browsers.includes(path) });
  const found = getBrowser(bare, ({ commands }) => {
    expect(commands.at(-1)).toContain('chromium');
    expect(browsers).toEqual([]);
    browsers.push('/usr/bin/chromium');
  });
  expect(found).toBe('/usr/bin/chromium');
});

it('says what to do when there is none and none can be had', () => {
  expect(() => getBrowser(machine([]), () => undefined)).toThrow(NONE);
});
