// The record sheet, typed from paper after the lesson: a whole class by the keyboard.

import { expect, it } from 'vitest';
import { openScreen, savedClass } from './tools/classes.ts';
import { hasFocus } from './tools/keyboard.ts';
import { newClass } from './tools/new-class.ts';
import { openApp } from './tools/open-app.ts';
import { english, englishPlan } from './tools/words.ts';

it('a lesson on paper is typed column by column, seen at once, and ranked', async () => {
  const page = await openApp();
  await newClass(page, { groups: 'Puffins\nTerns\nGannets' });
  await openScreen(page, 'record');
  await page.getByLabel(englishPlan('record-sheet.reading-of', { number: 1, group: 'Puffins' })).focus();
  // Enter goes down the column; what cannot be read is said and not taken.
  for (const typed of ['35.7', '3..5', '31,5']) {
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
  }
  await page.getByText('3..5').waitFor();
  await page.getByLabel(englishPlan('record-sheet.reading-of', { number: 1, group: 'Terns' })).fill('33.5');
  await page.keyboard.press('Tab');
  const second = page.getByLabel(englishPlan('record-sheet.reading-of', { number: 2, group: 'Terns' }));
  const apart = page.getByText(englishPlan('record-sheet.readings-apart', { group: 'Terns', gap: '30.2 cm' }));
  await second.fill('3.3');
  await page.keyboard.press('Tab');
  await apart.waitFor();
  await second.fill('33');
  await page.keyboard.press('Tab');
  await apart.waitFor({ state: 'detached' });
  for (const group of ['Puffins', 'Terns']) {
    await page.getByRole('button', { name: `Not counted ${group}` }).click();
    const fields = page.locator('.pieces-row', { hasText: group });
    await fields.getByLabel('Cube', { exact: true }).fill('4');
    await fields.getByLabel('Cone', { exact: true }).fill('1');
    await page.keyboard.press('Tab');
  }
  await page.getByLabel(englishPlan('record-sheet.state-of', { group: 'Gannets' })).selectOption('absent');
  await page.getByRole('button', { name: englishPlan('record-sheet.seen-all') }).click();
  await page.getByText(englishPlan('record-sheet.who-missing')).waitFor();
  await page.getByLabel(englishPlan('record-sheet.who')).fill('teacher');
  await page.getByRole('button', { name: englishPlan('record-sheet.seen-all') }).click();
  await page.getByText(englishPlan('class.measured-of', { measured: 3, of: 3 })).waitFor();
  const { attempts } = JSON.parse((await savedClass(page)).text) as { attempts: Record<string, unknown>[] };
  expect(
    attempts.map(({ group, observed, confirmedBy }) => [
      group,
      (observed as { heightReadingsMm: number[] }).heightReadingsMm,
      confirmedBy,
    ]),
  ).toEqual([
    ['puffins', [357], 'teacher'],
    ['gannets', [315], null],
    ['terns', [335, 330], 'teacher'],
  ]);
  // The next try of a group begins at its first reading.
  await page.getByRole('button', { name: `${english('frame.new-try')} Puffins` }).click();
  const reading = page.getByLabel(englishPlan('record-sheet.reading-of', { number: 1, group: 'Puffins' }));
  expect(await hasFocus(reading)).toBe(true);
  await openScreen(page, 'board');
  const rows = page.locator('.rank-table tbody tr');
  await expect.poll(() => rows.first().innerText()).toMatch(/Puffins/);
  expect(await page.getByRole('main').innerText()).toMatch(/Gannets/);
});

it('a judge has the marks of all groups, and a measurer the numbers', async () => {
  const page = await openApp();
  await page.getByRole('button', { name: english('start.demo-open') }).click();
  // The device goes on to a judge, whose marks must not be signed by the teacher.
  await openScreen(page, 'record');
  await page.getByLabel(englishPlan('record-sheet.who')).fill('teacher');
  await openScreen(page, 'class');
  await page.getByRole('button', { name: english('role.judge') }).click();
  await page.getByRole('button', { name: 'Harbour Wall' }).click();
  const terns = page.locator('.marks-list li', { hasText: 'Terns' });
  await terns.getByRole('group', { name: 'Idea' }).getByRole('button', { name: '3' }).click();
  await terns.getByRole('group', { name: 'Idea' }).getByRole('button', { name: '3', pressed: true }).waitFor();
  const { attempts } = JSON.parse((await savedClass(page)).text);
  const marks = attempts.find(
    ({ group, challenge }: Record<string, string>) => group === 'terns' && challenge === 'harbour-wall',
  ).judged;
  expect(marks).toContainEqual({ judge: english('role.judge'), criterion: 'idea', mark: 3 });
});
