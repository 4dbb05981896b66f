// What the worker keeps and gives up as versions come and go on the host, the network breaks off, or the device is full.

import { beforeEach, describe, expect, it } from 'vitest';
import type { RunningWorker } from '../../../../tests/tools/worker-host.ts';
import { KeptFiles, SCOPE, WebHost, workerOf } from '../../../../tests/tools/worker-host.ts';

const OTHERS = ['cairnmark https://host.example/app/deep/ A', 'another app'];
const at: { host: WebHost; kept: KeptFiles } = { host: new WebHost(), kept: new KeptFiles(new WebHost()) };

beforeEach(async () => {
  const host = new WebHost();
  Object.assign(at, { host, kept: new KeptFiles(host) });
  for (const name of OTHERS) await at.kept.open(name);
});

/** Puts a version on the host. */
async function put(version: string): Promise<RunningWorker> {
  at.host.files.clear();
  at.host.files.set('', `<script src="./assets/${version}.js">`);
  at.host.files.set(`assets/${version}.js`, version);
  return workerOf(version, at.host, at.kept);
}

const ours = (): string[] =>
  [...at.kept.shelves.keys()].filter((name) => !OTHERS.includes(name)).map((name) => name.split(' ').at(-1) ?? '');
const NETWORK = new TypeError('no network');

describe('the worker', () => {
  it('keeps its version for when the host is gone, and takes the older one away when it begins', async () => {
    const a = await put('A');
    await a.install();
    await a.activate();
    const b = await put('B');
    await b.install();
    expect(ours()).toEqual(['A', 'B']);
    at.host.gone = NETWORK;
    expect(await a.answer(`${SCOPE}assets/A.js`)).toBe('A');
    await b.activate();
    expect(ours()).toEqual(['B']);
    expect(await b.answer(SCOPE)).toContain('B.js');
    expect([...at.kept.shelves.keys()]).toEqual(expect.arrayContaining(OTHERS));
  });

  it('that took over between a page of the older version and its parts has the page loaded anew', async () => {
    const a = await put('A');
    await a.install();
    await a.activate();
    const b = await put('B');
    await b.install();
    await b.activate();
    expect(await b.answer(`${SCOPE}assets/A.js`)).toContain('location.reload()');
    expect(await b.answer(`${SCOPE}assets/A.css`)).toBe('');
    // The same where the older one still answers, with its shelf gone.
    expect(await a.answer(`${SCOPE}assets/A.js`)).toContain('location.reload()');
    // What a still newer version has put on the host is taken from there.
    at.host.files.set('assets/C.js', 'C');
    expect(await b.answer(`${SCOPE}assets/C.js`)).toBe('C');
    at.host.gone = NETWORK;
    await expect(b.answer(`${SCOPE}assets/A.js`)).rejects.toBe(NETWORK);
  });

  it('leaves nothing of a version that broke off or found no room, and all of the one at work', async () => {
    const a = await put('A');
    await a.install();
    await a.activate();
    for (const fault of [NETWORK, new DOMException('full', 'QuotaExceededError')]) {
      const b = await put('B');
      at.host.gone = fault;
      await expect(b.install()).rejects.toBe(fault);
      at.host.gone = null;
      expect(ours()).toEqual(['A']);
    }
    at.host.gone = NETWORK;
    expect(await a.answer(SCOPE)).toContain('A.js');
  });

  it('of the version that is at work takes nothing away when the host went back to it and broke off', async () => {
    const a = await put('A');
    await a.install();
    await a.activate();
    await (await put('B')).install();
    const again = await put('A');
    at.host.gone = NETWORK;
    await expect(again.install()).rejects.toBe(NETWORK);
    expect(await a.answer(SCOPE)).toContain('A.js');
  });

  it('refuses a page of another version: a host in the middle of an upload', async () => {
    const a = await put('A');
    at.host.files.set('', '<script src="./assets/B.js">');
    await expect(a.install()).rejects.toThrow(RangeError);
    expect(ours()).toEqual([]);
  });

  it('that begins leaves alone what a still newer one is just putting on its shelf', async () => {
    const a = await put('A');
    await a.install();
    await a.activate();
    const b = await put('B');
    await b.install();
    const c = await put('C');
    await c.install();
    await b.activate();
    expect(ours()).toEqual(['B', 'C']);
    await c.activate();
    expect(ours()).toEqual(['C']);
    at.host.gone = NETWORK;
    expect(await c.answer(SCOPE)).toContain('C.js');
  });

  it('answers from the network where the browser cannot get at what it kept', async () => {
    const a = await put('A');
    await a.install();
    at.kept.broken = new DOMException('broken', 'UnknownError');
    expect(await a.answer(`${SCOPE}assets/A.js`)).toBe('A');
  });

  it('counts pages of ours as open, and none of what else the host has', async () => {
    const a = await put('A');
    expect(await a.isAlone([SCOPE, 'https://host.example/', 'https://host.example/other/'])).toBe(true);
    expect(await a.isAlone([SCOPE, `${SCOPE}#/build`])).toBe(false);
  });
});
