// The Score card, as a group and its teacher use it: readings, units, own results, the stopwatch, marks, decisions, tries,
// a sheet of paper.

import { expect, it } from 'vitest';
import { addReading, confirm, head, line, onCard, ownResult, unfold } from './tools/card.ts';
import { goTo, openDemo, openScreen, reload, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

const openCard = async (...names: readonly string[]) => {
  const page = await openApp();
  await openDemo(page);
  if (names.length > 0) await goTo(page, ...names);
  await openScreen(page, 'score');
  await onCard(page);
  return page;
};

it('a further reading is averaged and makes the build provisional, until somebody has seen it', async () => {
  const page = await openCard();
  await page.getByText(english('score-card.real'), { exact: true }).click();
  // The demo has one reading, 37.9 cm; 1 point a whole cm.
  await addReading(page, '38,1');
  expect(await line(page, 'Height').innerText()).toContain('38.0 cm');
  expect(await head(page)).toContain('38 points');
  expect(await head(page)).toContain(english('score-card.provisional'));
  await confirm(page, 'Measurer');
  expect(await head(page)).toContain('Seen by Measurer.');
});

it('a reading typed ten times too large is asked about before its mean earns points', async () => {
  const page = await openCard();
  await page.getByText(english('score-card.real'), { exact: true }).click();
  await addReading(page, '379');
  await expect.poll(() => page.getByText('These readings are 341.1 cm apart.').count()).toBe(1);
});

it('the card tells no place while the Board hides places', async () => {
  const page = await openCard();
  await expect.poll(() => head(page)).toContain('Place 1');
  await openScreen(page, 'board');
  await page.getByRole('button', { name: english('board.hide-places') }).click();
  await openScreen(page, 'score');
  await onCard(page);
  expect(await head(page)).not.toContain('Place 1');
});

it('a typed length is flagged, asked back or taken, and other units change no stored size', async () => {
  const page = await openCard();
  await page.getByText(english('score-card.real'), { exact: true }).click();
  const reading = page.getByLabel(english('score-card.reading'));
  await reading.fill('6..0');
  await page.keyboard.press('Enter');
  expect(await reading.getAttribute('aria-invalid')).toBe('true');
  await page.getByText('I cannot read 6..0 as a length.').waitFor();
  await reading.fill('1,250');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: '1.25 cm', exact: true }).waitFor();
  await reading.fill('14 7/8 in');
  await page.keyboard.press('Enter');
  await onCard(page);
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await page.getByRole('button', { name: english('units.in'), exact: true }).click();
  await page.keyboard.press('Escape');
  await page.locator('.card-readings').getByText('14 7/8 in').waitFor();
  // 14.875 x 25.4, by hand, and the reading of 379 mm as it was.
  expect(JSON.parse((await savedClass(page)).text).attempts[6].observed.heightReadingsMm).toEqual([379, 377.825]);
});

it('an own result is compared at once, with a hint at the step, and can be taken away', async () => {
  const page = await openCard();
  await ownResult(page, 'Volume', '520');
  const own = line(page, 'Volume').locator('.card-own');
  await expect.poll(() => own.innerText()).toContain('one piece left out');
  await own.getByRole('button').click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('601');
  await page.keyboard.press('Enter');
  await expect.poll(() => own.innerText()).toContain('601 cm³: agrees');
  await own.getByRole('button').click();
  await own.getByRole('button', { name: english('score-card.drop-own') }).click();
  await expect.poll(() => own.innerText()).toBe(`${english('score-card.enter-own')}\n: volume`);
});

it('the stopwatch keeps the seconds that it stood, or until it fell', async () => {
  const page = await openCard();
  await page.getByText(english('score-card.real'), { exact: true }).click();
  await page.getByRole('button', { name: english('score-card.start'), exact: true }).click();
  await page.waitForTimeout(700);
  await page.getByRole('button', { name: english('score-card.it-fell') }).click();
  await onCard(page);
  expect(await head(page)).toMatch(/Fell after (0\.[6-9]|[1-9][\d.]*) seconds?\. It takes no place\./);
  const seconds = await page.getByLabel(english('score-card.seconds-fell')).inputValue();
  expect(Number(seconds)).toBeGreaterThanOrEqual(0.6);
});

it('a stopwatch that runs goes on over a reload and a look at another screen', async () => {
  const page = await openCard();
  const shows = async (): Promise<number> => Number.parseFloat(await page.getByRole('timer').innerText());
  await page.getByText(english('score-card.real'), { exact: true }).click();
  await page.getByRole('button', { name: english('score-card.start'), exact: true }).click();
  await page.waitForTimeout(600);
  await reload(page);
  await onCard(page);
  expect(await shows()).toBeGreaterThanOrEqual(0.6);
  await openScreen(page, 'board');
  await openScreen(page, 'score');
  await onCard(page);
  const before = await shows();
  await expect.poll(shows).toBeGreaterThan(before);
  await page.getByRole('button', { name: english('score-card.stop'), exact: true }).click();
  await onCard(page);
  expect(Number(await page.getByLabel(english('score-card.seconds')).inputValue())).toBeGreaterThan(0.6);
  await reload(page);
  await onCard(page);
  await page.getByText(english('score-card.real-open'), { exact: true }).waitFor();
  expect(await shows()).toBe(0);
});

it('a decision stands beside what was measured, and stays in sight when it is taken back', async () => {
  const page = await openCard();
  await unfold(page, 'Height');
  const height = line(page, 'Height');
  await height.getByText(english('score-card.decide'), { exact: true }).click();
  await height.getByLabel(english('score-card.decide-value')).fill('37');
  await height.getByLabel(english('score-card.who')).fill('Teacher');
  await height.getByLabel(english('score-card.reason')).fill('The tip was bent.');
  await height.getByRole('button', { name: english('score-card.decide-now'), exact: true }).click();
  await expect.poll(() => height.locator('.card-three').innerText()).toMatch(/38\.0 cm[\s\S]*37\.9 cm[\s\S]*37\.0 cm/);
  const byHand = page.locator('.card-by-hand');
  await byHand.getByRole('button', { name: english('score-card.take-back') }).click();
  await page.keyboard.type('Measured once more.');
  await byHand.getByRole('button', { name: english('score-card.take-back') }).click();
  await expect.poll(() => byHand.innerText()).toMatch(/37\.0 cm by Teacher was taken back: Measured once more\./);
  await expect.poll(() => height.innerText()).toContain('37.9 cm');
});

it('judges mark from 0 to 4, and the average earns', async () => {
  const page = await openCard('Fulmars', 'Harbour Wall');
  const marks = page.locator('.card-marks');
  await marks.getByRole('textbox').fill('Visitor');
  await marks.getByRole('group', { name: 'Craft' }).getByRole('button', { name: '0', exact: true }).click();
  await onCard(page);
  // Two judges gave 3 each: (3 + 3 + 0) / 3 = 2 of 4; 2 points each.
  await expect.poll(() => line(page, 'Craft').innerText()).toMatch(/2 of 4[\s\S]*4$/);
});

it('a further try begins with the same pieces, and which try counts is told', async () => {
  const page = await openCard();
  await page.getByRole('button', { name: english('score-card.again') }).click();
  await page.waitForURL('**/#/build');
  await openScreen(page, 'score');
  await onCard(page);
  expect(await head(page)).toContain('Tall Light, try 3');
  expect(await head(page)).toContain('Try 2 counts for the place.');
});

it('prints on one sheet of A4 and of Letter', async () => {
  const page = await openCard('Fulmars', 'Harbour Wall');
  for (const format of ['A4', 'Letter']) {
    const sheets = (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g);
    expect(sheets?.length, format).toBe(1);
  }
});
