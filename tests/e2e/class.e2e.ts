// A class of one's own: made, changed, handed over, copied and deleted, with nothing but a browser.

import { expect, it } from 'vitest';
import { allKept, onScreen, openDemo, openScreen, openStart, reload, savedClass } from './tools/classes.ts';
import { hasFocus, pressOn } from './tools/keyboard.ts';
import { newClass } from './tools/new-class.ts';
import { openApp } from './tools/open-app.ts';
import { english, englishPlan } from './tools/words.ts';

const GROUPS = 'Puffins\nTerns\nGannets';

it('groups are typed, renamed, joined, taken out and brought back; a late one comes; all of it is kept', async () => {
  const page = await openApp();
  await newClass(page, { name: 'Harbour, period 3', groups: GROUPS });
  const names = () =>
    page
      .getByLabel(englishPlan('class.group-name'))
      .all()
      .then((fields) => Promise.all(fields.map((field) => field.inputValue())));
  await page.getByLabel(englishPlan('class.group-name')).first().fill('Auks');
  await page.keyboard.press('Enter');
  await page.getByLabel(englishPlan('class.group-name')).nth(1).fill('   ');
  await page.keyboard.press('Tab');
  await page.getByText(englishPlan('class.name-empty', { kept: 'Terns' })).waitFor();
  await page.getByLabel(englishPlan('class.late')).fill('Skuas, terns');
  await page.keyboard.press('Enter');
  await page.getByText(englishPlan('class.groups-twice', { names: 'terns' })).waitFor();
  expect(await names()).toEqual(['Auks', 'Terns', 'Gannets', 'Skuas']);
  await page.getByRole('button', { name: `${englishPlan('class.join')} Gannets` }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Auks' }).click();
  expect(await names()).toEqual(['Auks', 'Terns', 'Skuas']);
  // The group at work was Auks: taken out, another goes on, and comes back with Undo.
  await page.getByRole('button', { name: `${englishPlan('class.take-out')} Auks` }).click();
  expect(await names()).toEqual(['Terns', 'Skuas']);
  // The button that was pressed is gone: the focus is on Undo.
  await page.keyboard.press('Enter');
  await allKept(page);
  await reload(page);
  expect(await names()).toEqual(['Auks', 'Terns', 'Skuas']);
});

it('by keys alone a class is made, and without groups or challenges it is not', async () => {
  const page = await openApp();
  await pressOn(page, `link ${english('start.new-go')}`);
  await pressOn(page, `button ${englishPlan('class.make')}`);
  await page.getByText(englishPlan('class.groups-missing')).waitFor();
  await page.getByLabel(englishPlan('class.groups-list')).focus();
  await page.keyboard.type('Terns');
  await pressOn(page, `button ${englishPlan('class.make')}`);
  await onScreen(page, 'class');
});

it('the device goes to the pupils and comes back by the PIN; pupils neither plan nor decide', async () => {
  const page = await openApp();
  await openDemo(page, 'class');
  await page.getByText(englishPlan('class.pin-none'), { exact: true }).click();
  await page.getByLabel(englishPlan('class.pin'), { exact: true }).fill('357');
  await page.getByRole('button', { name: englishPlan('class.pin-save') }).click();
  await page.getByText(englishPlan('class.pin-short')).waitFor();
  await page.getByLabel(englishPlan('class.pin'), { exact: true }).fill('3571');
  await page.getByRole('button', { name: englishPlan('class.pin-save') }).click();
  await page.getByRole('button', { name: english('role.pupil') }).click();
  await onScreen(page, 'build');
  const tabs = await page.getByRole('navigation').getByRole('link').allInnerTexts();
  expect(tabs).toEqual(['tab.build', 'tab.supply', 'tab.score', 'tab.board'].map((key) => english(key as 'tab.build')));
  await page.goto(`${page.url().split('#')[0]}#/score`);
  await onScreen(page, 'score');
  await page.locator('.card-head').waitFor();
  expect(await page.getByText(english('score-card.decide')).count()).toBe(0);
  expect(await page.getByRole('button', { name: english('score-card.seen-undo') }).count()).toBe(0);
  await page.goto(`${page.url().split('#')[0]}#/challenge`);
  await onScreen(page, 'build');
  // Back over Start is no way round it.
  await openStart(page);
  await page.getByRole('button', { name: english('start.go-on') }).click();
  await onScreen(page, 'build');
  await page.getByRole('button', { name: english('frame.settings') }).click();
  const dialog = page.getByRole('dialog', { name: english('frame.settings') });
  await dialog.getByRole('button', { name: english('role.teacher') }).click();
  await dialog.getByLabel(english('role.pin')).fill('1234');
  await dialog.getByText(english('role.pin-wrong')).waitFor();
  await dialog.getByLabel(english('role.pin')).fill('3571');
  const teacher = dialog.getByRole('button', { name: english('role.teacher'), pressed: true });
  await teacher.waitFor();
  expect(await hasFocus(teacher)).toBe(true);
  // Without a PIN nothing is asked, and the button that took it away hands its focus on.
  await page.keyboard.press('Escape');
  await openScreen(page, 'class');
  await page.getByText(englishPlan('class.pin-set'), { exact: true }).click();
  await page.getByRole('button', { name: englishPlan('class.pin-drop') }).click();
  expect(await hasFocus(page.getByLabel(englishPlan('class.pin'), { exact: true }))).toBe(true);
});

it('a copy has no results, and everything of a class can be deleted', async () => {
  const page = await openApp();
  await openDemo(page, 'class');
  await allKept(page);
  await page.getByRole('button', { name: englishPlan('class.copy') }).click();
  await allKept(page);
  const copy = JSON.parse((await savedClass(page)).text);
  expect([copy.name, copy.attempts.length, copy.groups.length]).toEqual(['Skerry Light, again', 0, 6]);
  await page.getByRole('button', { name: englishPlan('class.delete') }).click();
  await page.getByRole('button', { name: englishPlan('class.delete-now') }).click();
  await page.getByRole('heading', { name: english('start.title') }).waitFor();
  // The class that was copied is there still.
  await page.getByText(english('start.last', { name: 'Skerry Light' })).waitFor();
  expect(await page.getByRole('button', { name: english('start.go-on') }).count()).toBe(1);
  // It is said, and the focus is there, not lost with the dialog.
  const told = english('start.erased', { name: 'Skerry Light, again' });
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(told);
});
