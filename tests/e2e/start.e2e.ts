// Start: the demo, a class file in and out, going on where one was, language, units.

import { demoClass } from '@cairnmark/demo';
import { decode, encode } from '@cairnmark/formats';
import { wordsFor } from '@cairnmark/words';
import { expect, it } from 'vitest';
import { ROOT, readText } from '../tools/files.ts';
import { inTurn } from '../tools/share.ts';
import {
  allKept,
  chooseFile,
  goTo,
  onScreen,
  openClass,
  openDemo,
  openScreen,
  openStart,
  reload,
  savedClass,
} from './tools/classes.ts';
import { newPage, openApp } from './tools/open-app.ts';
import { english, spanish } from './tools/words.ts';

const DEMO = encode('class', demoClass());
const corpus = (name: string): string => readText(ROOT, `tests/corpus/${name}`);

it('the demo class opens at its first group and challenge', async () => {
  const page = await openApp();
  await openDemo(page);
  expect(await page.locator('.who-now b').textContent()).toMatch(/^Puffins/);
  expect(
    await page
      .getByRole('navigation', { name: english('frame.tabs') })
      .getByRole('link')
      .allTextContents(),
  ).toEqual(
    (['class', 'challenge', 'kit', 'print', 'supply', 'build', 'record', 'score', 'board', 'fair'] as const).map(
      (tab) => english(`tab.${tab}`),
    ),
  );
});

it('over plain http from a laptop in the school network the demo opens too', async () => {
  const page = await openApp({ overNetwork: true });
  expect(await page.evaluate(() => isSecureContext)).toBe(false);
  await openDemo(page);
  await allKept(page);
});

const WHOLE = [
  ['the demo class', DEMO],
  ['a class of one build', corpus('tower-of-five.json')],
  ['a class with every rule', corpus('every-rule.json')],
] as const;

it.each(inTurn(WHOLE, 3, 'files'))(
  '%s goes in as a file and comes out byte for byte as it is written',
  async (_, text) => {
    const page = await openApp();
    await openClass(page, text);
    const first = await savedClass(page);
    expect(first.text).toBe(written(text));
    expect(first.name).toMatch(/^[a-z0-9-]+\.json$/);
    await allKept(page);
    await reload(page);
    expect((await savedClass(page)).text).toBe(first.text);
  },
);

const FAULTY = [
  ['no file of ours', 'broken/cut-off.json', /line 18, column 14/],
  ['a kit', 'broken/size-negative.json', /^format: .*"class"/],
  ['a class with a fault', 'broken/challenge-unknown.json', /^attempts 1, challenge: (?!attempts).*"towers"/],
] as const;

it.each(inTurn(FAULTY, 3, 'faulty files'))(
  '%s is not opened: file, place and what to do are said, and nothing is lost',
  async (_, path, place) => {
    const page = await openApp();
    await openDemo(page);
    await allKept(page);
    await openStart(page);
    await chooseFile(page, 'from-a-friend.json', corpus(path));
    const alert = page.getByRole('alert');
    await alert.getByText(english('start.file-refused', { file: 'from-a-friend.json' })).waitFor();
    const read = decode(corpus(path), 'class');
    const issues = read.ok ? [] : read.issues;
    const sentences = await alert.getByRole('listitem').allTextContents();
    expect(sentences).toEqual(issues.map(wordsFor('en').issue));
    expect(sentences.join()).toMatch(place);
    await page.getByRole('button', { name: english('start.go-on') }).click();
    await onScreen(page, 'build');
    expect((await savedClass(page)).text).toBe(DEMO);
  },
);

it('of many faults the first are said, and how many more there are', async () => {
  const page = await openApp();
  const broken = DEMO.replaceAll(/"challenge": "[^"]*"/g, '"challenge": "nowhere"');
  await chooseFile(page, 'all-wrong.json', broken);
  const sentences = page.getByRole('alert').getByRole('listitem');
  await sentences.last().waitFor();
  const count = demoClass().attempts.length;
  expect(await sentences.count()).toBe(6);
  expect(await sentences.last().textContent()).toBe(english('start.file-more', { count: count - 5 }));
});

it('back at Start before Build has arrived, the class is there to go on with', async () => {
  const page = await openApp();
  await page.route(/assets\/build-[^/]*\.js$/, async (route) => {
    await page.waitForTimeout(2000);
    await route.continue();
  });
  await page.getByRole('button', { name: english('start.demo-open') }).click();
  await allKept(page);
  await openStart(page);
  await page.getByRole('button', { name: english('start.go-on') }).click();
  await onScreen(page, 'build');
});

it('a reloaded page goes on where it was: screen, group, challenge and try', async () => {
  const page = await openApp();
  await openDemo(page);
  await goTo(page, 'Gannets', 'Harbour Wall', english('frame.new-try'));
  await openScreen(page, 'score');
  const where = await page.locator('.who-now').textContent();
  await allKept(page);
  await reload(page);
  expect(page.url()).toMatch(/#\/score$/);
  expect(await page.locator('.who-now').textContent()).toBe(where);
});

it('a closed tab is gone on with from Start, with what was done last', async () => {
  const page = await openApp();
  await openDemo(page);
  await goTo(page, 'Terns', english('frame.new-try'));
  await allKept(page);
  const before = (await savedClass(page)).text;
  const next = await newPage(page.context());
  await page.close();
  await next.goto(page.url().replace(/#.*/, ''));
  await next.getByText(english('start.last', { name: 'Skerry Light' })).waitFor();
  await next.getByRole('button', { name: english('start.go-on') }).click();
  await onScreen(next, 'build');
  expect(await next.locator('.who-now b').textContent()).toMatch(/^Terns/);
  expect((await savedClass(next)).text).toBe(before);
});

it('speaks Spanish to a browser in Spanish', async () => {
  const page = await openApp({ locale: 'es-MX' });
  await page.getByRole('heading', { name: spanish('start.title') }).waitFor();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
});

it('changes its language at a tap and remembers it', async () => {
  const page = await openApp();
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await page.getByRole('button', { name: english('language.es') }).click();
  await page.getByRole('heading', { name: spanish('frame.settings') }).waitFor();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
  await reload(page);
  await page.getByRole('heading', { name: spanish('start.title') }).waitFor();
});

it('remembers the units, and changes no stored size by them', async () => {
  const page = await openApp();
  await openClass(page, DEMO);
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await page.getByRole('button', { name: english('units.in') }).click();
  await page.keyboard.press('Escape');
  expect((await savedClass(page)).text).toBe(DEMO);
  await reload(page);
  await page.getByRole('button', { name: english('frame.settings') }).click();
  const inches = page.getByRole('button', { name: english('units.in') });
  expect(await inches.getAttribute('aria-pressed')).toBe('true');
});

/** The class in the file, as we write it. */
function written(text: string): string {
  const read = decode(text, 'class');
  if (!read.ok) throw new RangeError('the fixture is broken');
  return encode('class', read.value.value);
}

it('a demo that does not arrive is told, and opens once the network is back', async () => {
  const page = await openApp({ provokes: /ERR_FAILED/ });
  await page.waitForLoadState('networkidle');
  await page.route(/\.js$/, (route) => route.abort());
  await page.getByRole('button', { name: english('start.demo-open') }).click();
  const alert = page.getByRole('alert');
  await alert.getByText(english('start.not-opened')).waitFor();
  expect(await alert.getByRole('listitem').allTextContents()).toEqual([english('frame.not-here-what')]);
  await page.unroute(/\.js$/);
  await openDemo(page);
});

it('a double tap opens the demo once', async () => {
  const page = await openApp();
  await page.getByRole('button', { name: english('start.demo-open') }).dblclick();
  await onScreen(page, 'build');
  await allKept(page);
  await openStart(page);
  await page
    .getByRole('button', { name: english('start.go-on') })
    .first()
    .waitFor();
  expect(await page.getByRole('button', { name: english('start.go-on') }).count()).toBe(1);
});

it('looked round again and again, the demo is kept once; what was tried in it is kept beside it', async () => {
  const page = await openApp();
  const kept = page.getByRole('button', { name: english('start.go-on') });
  const backAtStart = async (): Promise<void> => {
    await allKept(page);
    await openStart(page);
    await kept.first().waitFor();
  };
  await openDemo(page);
  await backAtStart();
  await openDemo(page);
  await backAtStart();
  expect(await kept.count()).toBe(1);
  await openDemo(page);
  await goTo(page, 'Terns', english('frame.new-try'));
  await backAtStart();
  await openDemo(page);
  await backAtStart();
  expect(await kept.count()).toBe(2);
});

it('a file that is gone when it is read is told', async () => {
  const page = await openApp({
    before: () => {
      File.prototype.text = () => Promise.reject(new DOMException('', 'NotReadableError'));
    },
  });
  await chooseFile(page, 'gone.json', DEMO);
  await page.getByRole('alert').getByText(english('start.file-gone')).waitFor();
});

it('a kept class of one group is told with one group', async () => {
  const page = await openApp();
  await openClass(page, corpus('tower-of-five.json'));
  await allKept(page);
  await openStart(page);
  const [, told] = english('start.last-what-one', { when: '|' }).split('|');
  await page.getByText(told ?? '').waitFor();
});
