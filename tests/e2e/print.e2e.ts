// The Score card on paper: the same numbers as on the screen, with where they come from.

import { expect, it } from 'vitest';
import { ROOT, readText } from '../tools/files.ts';
import { onCard } from './tools/card.ts';
import { goTo, openClass, openDemo, openScreen } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

it('paper tells what was measured or decided, that nobody has seen the build, and which try counts', async () => {
  const page = await openApp();
  await openDemo(page);
  await openScreen(page, 'score');
  await onCard(page);
  const paper = page.locator('.print-card');
  expect(await paper.textContent()).toContain('37.9 cm ± 0.3 cm (measured)');
  await page.getByRole('button', { name: english('score-card.show-try', { number: 1 }) }).click();
  await onCard(page);
  await expect.poll(() => paper.textContent()).toContain('Try 2 counts for the place');
  await page.getByRole('button', { name: english('score-card.again') }).click();
  await openScreen(page, 'score');
  await onCard(page);
  await expect.poll(() => paper.textContent()).toContain(english('score-card.provisional'));
});

it('paper of a challenge without points shows what the places go by, and no total', async () => {
  const page = await openApp();
  const record = JSON.parse(readText(ROOT, 'packages/demo/src/skerry-light.json'));
  record.challenges[0].points = [];
  await openClass(page, JSON.stringify(record));
  await goTo(page, 'Fulmars', 'Tall Light');
  await openScreen(page, 'score');
  await onCard(page);
  const paper = page.locator('.print-card');
  expect(await paper.locator('.print-total').textContent()).toMatch(/^34\.7 cm ?Height/);
  expect(await paper.textContent()).not.toContain(english('score-card.total'));
});

it('paper of a try with decisions, readings, marks and own results is one sheet of A4 and of Letter', async () => {
  const page = await openApp();
  await openClass(page, readText(ROOT, 'tests/corpus/every-rule.json'));
  await goTo(page, 'Petrels', 'Tall Light');
  await openScreen(page, 'score');
  await onCard(page);
  for (const format of ['A4', 'Letter']) {
    const sheets = (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g);
    expect(sheets?.length, format).toBe(1);
  }
});
