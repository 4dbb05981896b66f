// Fair points: points that favour a solid are found, held against the class, kept as a copy; and why there are none, in words.

import { demoClass } from '@cairnmark/demo';
import { encode } from '@cairnmark/formats';
import { expect, it } from 'vitest';
import { onScreen, openClass, openScreen, savedClass } from './tools/classes.ts';
import { favour, mostEven, openFair, useFirstRule } from './tools/fair.ts';
import { pressOn, tabTo } from './tools/keyboard.ts';
import { openApp } from './tools/open-app.ts';
import { englishTalk } from './tools/words.ts';

const CONE = 'Cone';

it('favours the cone, shows who would have won, keeps the copy, and leaves the old results alone', async () => {
  const page = await openApp();
  await openFair(page);
  await page.getByLabel(englishTalk('lab.negative')).check();
  await favour(page, CONE);
  const found = await page.locator('.fair-found').innerText();
  // Of a cone: 1 flat face, 1 curved surface, no straight edge, 1 corner. Edges of the others are at least as many as their
  // corners, and the cylinder and the ball have neither.
  expect(found).toContain('1 point for every corner and −1 point for every edge');
  await useFirstRule(page);
  const bars = await page.locator('.fair-bars tbody tr').allInnerTexts();
  const earned = new Map(bars.map((row) => row.split(/\n+/)).map((cells) => [cells[0], cells.at(-1)?.trim()]));
  expect(earned.get(CONE)).toBe('1');
  expect(await page.locator('.fair-most').allInnerTexts()).toEqual(['1']);

  const ranked = await page.locator('.fair-ranked tbody tr').allInnerTexts();
  expect(ranked).toHaveLength(6);
  expect(ranked.find((row) => row.startsWith('Puffins'))).toContain('1st: 37.9 cm');
  expect(ranked[0]).toMatch(/^Fulmars\s+4th: 34\.7 cm\s+1st: −15 points/);
  expect(await page.locator('.fair-won').innerText()).toContain(englishTalk('lab.other-winner'));

  await page.getByRole('button', { name: englishTalk('lab.keep') }).click();
  await page.getByRole('link', { name: englishTalk('lab.to-board') }).click();
  await onScreen(page, 'board');
  await page.getByRole('heading', { name: 'Tall Light 2' }).waitFor();
  await page.locator('.rank-table tbody tr').first().waitFor();
  expect(await page.locator('.rank-table tbody tr').first().innerText()).toContain('Fulmars');
  await page.getByRole('button', { name: 'Tall Light', exact: true }).click();
  expect(await page.locator('.rank-table tbody tr').first().innerText()).toContain('Puffins');

  const kept: ReturnType<typeof demoClass> = JSON.parse((await savedClass(page)).text);
  const demo = demoClass();
  const same = (one: (typeof demo)['challenges'][number]) => kept.challenges.find(({ id }) => id === one.id);
  for (const challenge of demo.challenges) expect(same(challenge)).toEqual(challenge);
  expect(kept.attempts.slice(0, demo.attempts.length)).toEqual(demo.attempts);
});

it('numbers of one column have the same decimals; what was found of other counts is gone; the paper riddle says what may count', async () => {
  const page = await openApp();
  await openFair(page);
  expect(await page.locator('.fair-said').innerText()).toContain(
    'by 2 points over the Square pyramid, Dodecahedron and Icosahedron',
  );
  await page.getByRole('button', { name: englishTalk('lab.for-paper', { area: '100 cm²' }) }).click();
  // A cube of 5 cm earns 5 for 150 cm2, a cuboid 3 for 158 cm2: 3.333 and 1.899 for 100 cm2.
  const numbers = await page.locator('.fair-number').allInnerTexts();
  expect(numbers.slice(0, 2)).toEqual(['3.33', '1.90']);
  expect(numbers.filter((text) => !/^\d+\.\d\d$/.test(text))).toEqual([]);
  await favour(page, 'Cube');
  await page.locator('.fair-riddle > summary').click();
  await page.getByRole('button', { name: englishTalk('lab.new-riddle') }).click();
  await page.getByRole('button', { name: englishTalk('lab.show-piece') }).click();
  await page.emulateMedia({ media: 'print' });
  const paper = await page.locator('.fair').innerText();
  expect(paper).toContain('What may count: faces, curved surfaces, edges and corners.');
  expect(paper).toContain(englishTalk('lab.family-one'));
  // What was shown to the class on the screen is still asked on the paper.
  expect(await page.locator('.fair-check b').isVisible()).toBe(false);
  expect(await page.locator('.fair-bars').isVisible()).toBe(false);
  await page.locator('.fair-riddle').evaluate((riddle: HTMLDetailsElement) => riddle.removeAttribute('open'));
  expect(await page.locator('.fair-bars').isVisible(), 'the riddle is folded away').toBe(true);
  await page.emulateMedia({ media: 'screen' });
  await page.locator('.fair-points .seg button').last().click();
  await expect.poll(() => page.locator('.fair-result > *, .fair-asked').count()).toBe(0);
});

it('a kit of one kind has nothing to compare', async () => {
  const page = await openApp();
  const demo = demoClass();
  const [first] = demo.challenges;
  if (first === undefined) throw new Error('no challenge');
  const alone = { ...first, kit: { ...first.kit, kinds: first.kit.kinds.slice(0, 1) } };
  const groups = demo.groups.map((group) => ({ ...group, measured: {} }));
  await openClass(page, encode('class', { ...demo, groups, challenges: [alone], attempts: [], supplies: {} }));
  await openScreen(page, 'fair');
  await page.getByText(englishTalk('lab.few-kinds')).waitFor();
  expect(await page.getByRole('button', { name: englishTalk('lab.search') }).count()).toBe(0);
});

it('says in plain words why the cube cannot be favoured; finds the fairest points; a riddle is guessed by the keys', async () => {
  const page = await openApp();
  await openFair(page);
  await favour(page, 'Cube');
  const why = page.locator('.fair-why');
  expect(await why.innerText()).toContain('No points can favour the Cube.');
  expect(await why.innerText()).toContain('The Cuboid has just as much of everything that may count.');
  expect(await why.locator('table').first().innerText()).toMatch(/Edges\s+12\s+12/);
  await favour(page, 'Triangular prism');
  expect(await why.innerText()).toContain(englishTalk('lab.offers'));
  await why
    .getByRole('button', { name: englishTalk('lab.try'), exact: true })
    .first()
    .click();
  expect(await page.locator('.fair-said').first().innerText()).toContain('These points favour the Triangular prism');
  await mostEven(page);
  expect(await page.locator('.fair-found').innerText()).toMatch(
    /The lowest earns \d+ points?, the highest \d+ points?\./,
  );
  // What is fairest for paper is told of paper; counted another way, nothing stays that was found before.
  await page.getByRole('button', { name: englishTalk('lab.for-paper', { area: '100 cm²' }), exact: true }).click();
  await expect.poll(() => page.locator('.fair-found').count()).toBe(0);
  await mostEven(page);
  expect(await page.locator('.fair-found').innerText()).toContain(`${englishTalk('lab.alike-paper')}.`);
  const ways = page.getByRole('group', { name: englishTalk('lab.counting') });
  await ways.locator('[aria-pressed="false"]').first().click();
  await expect.poll(() => page.locator('.fair-found').count()).toBe(0);
  await ways.locator('[aria-pressed="false"]').first().click();
  await pressOn(page, `summary ${englishTalk('lab.riddle')}`);
  await pressOn(page, `button ${englishTalk('lab.new-riddle')}`);
  await page.locator('.fair-examples li').first().waitFor();
  await pressOn(page, `button ${englishTalk('lab.show-rule')}`);
  const rule = await page.locator('.fair-asked [role="status"]').last().innerText();
  const [, points = '', thing = ''] = /(\d) points? for every (\w+ ?\w*)\./.exec(rule) ?? [];
  const field = { face: 'Faces', 'curved surface': 'Curved surfaces', edge: 'Edges', corner: 'Corners' }[thing];
  await tabTo(page, `input ${field}`, 'Shift+Tab');
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(points);
  await pressOn(page, `button ${englishTalk('lab.check-guess')}`);
  await page.getByText(englishTalk('lab.guess-right')).waitFor();
});
