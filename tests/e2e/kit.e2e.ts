// The Kit screen, as a teacher uses it: sizes, slopes, slips of the ruler, stock, crushed pieces, the print bar, a kit that
// was built with; in centimetres, in inches, in Spanish.

import { expect, it } from 'vitest';
import { openDemo, openScreen, savedClass } from './tools/classes.ts';
import { hasFocus } from './tools/keyboard.ts';
import { kindRow, openKit, sizeField, typeInto, unfoldKit } from './tools/kit.ts';
import { openApp } from './tools/open-app.ts';
import { english, englishPlan, spanish, spanishPlan } from './tools/words.ts';

interface Kind {
  readonly id: string;
  readonly name: string;
  readonly stock: number;
  readonly crushed?: number;
  readonly solid: { readonly sizes: Readonly<Record<string, number>> };
}
const kindsIn = (text: string, challenge = 0): readonly Kind[] => JSON.parse(text).challenges[challenge].kit.kinds;

it('sizes are typed as they are measured; a slope, a slip and a nonsense are never taken for a height', async () => {
  const page = await openApp();
  await openKit(page);
  await typeInto(sizeField(page, 'cube', 'edge'), '6');
  expect(await kindRow(page, 'cube').locator('.b').innerText()).toBe('216.0');
  await typeInto(sizeField(page, 'cube', 'edge'), '6..0');
  await page.getByText('I cannot read 6..0 as a length. Type it like 12.5 cm or 4 3/4 in. I kept 6.0 cm.').waitFor();
  await typeInto(sizeField(page, 'cube', 'edge'), '60');
  await page.getByText('60 cm is ten times 6 cm. Did you read mm?').waitFor();
  await page.getByRole('button', { name: 'Keep 6 cm' }).click();
  expect(await sizeField(page, 'cube', 'edge').inputValue()).toBe('6.0');
  expect(await hasFocus(sizeField(page, 'cube', 'edge'))).toBe(true);
  // The cone of the demo is 6 cm across and 4 cm high: 5 cm along its slope.
  await typeInto(sizeField(page, 'cone', 'height'), '5');
  await page.getByText('The slant height of this piece is 5 cm. Did you measure along the slope?').waitFor();
  await page.getByRole('button', { name: 'Yes: height 4 cm' }).click();
  expect(await sizeField(page, 'cone', 'height').inputValue()).toBe('4.0');
  await kindRow(page, 'cone').locator('.kit-slope').click();
  const slope = kindRow(page, 'cone').getByLabel(englishPlan('way.slant-round'));
  expect(await hasFocus(slope)).toBe(true);
  await typeInto(slope, '3');
  await page.getByText('3 is too small: 3.01 cm is the least. I kept 5.0 cm.').waitFor();
  await typeInto(slope, '7.8');
  await page.getByText('7.8 cm along the slope: 7.2 cm straight up.').waitFor();
  // Sides that do not close wait until they do.
  await typeInto(sizeField(page, 'sq-frustum', 'topEdge'), '7');
  await page.getByText('The top must be smaller than the bottom.').waitFor();
  await typeInto(sizeField(page, 'sq-frustum', 'edge'), '8');
  await expect.poll(() => page.getByText('The top must be smaller than the bottom.').count()).toBe(0);
  const kinds = kindsIn((await savedClass(page)).text);
  const sizesOf = (id: string) => kinds.find((kind) => kind.id === id)?.solid.sizes;
  expect([sizesOf('cube'), sizesOf('cone'), sizesOf('sq-frustum')]).toEqual([
    { edge: 60 },
    { diameter: 60, height: 72 },
    { edge: 80, height: 50, sides: 4, topEdge: 70 },
  ]);
});

it('solids come and go, pieces are crushed and repaired, a page printed small is put right, and each is undone', async () => {
  const page = await openApp();
  await openKit(page);
  const undo = page.getByRole('button', { name: englishPlan('kit.undo'), exact: true });
  await page.getByRole('button', { name: englishPlan('kit.add') }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Antiprism' }).click();
  await page.keyboard.type('Lamp');
  await page.keyboard.press('Enter');
  await page.getByText('New name: Lamp.').waitFor();
  const more = kindRow(page, 'cone').getByRole('button', { name: 'More about Cone' });
  await more.click();
  await kindRow(page, 'cone')
    .getByRole('button', { name: englishPlan('kit.one-crushed') })
    .click();
  await kindRow(page, 'cone').getByText('Made: 6. Crushed: 1. Whole: 5.').waitFor();
  await kindRow(page, 'cone')
    .getByRole('button', { name: englishPlan('kit.take-away') })
    .click();
  await page.getByText('Taken away: Cone.').waitFor();
  const putBack = page.getByRole('button', { name: englishPlan('kit.put-back') });
  expect(await hasFocus(putBack)).toBe(true);
  await putBack.click();
  await kindRow(page, 'cone').waitFor();
  expect(await hasFocus(kindRow(page, 'cone').getByLabel(englishPlan('kit.kind-name')))).toBe(true);
  await unfoldKit(page, 'kit.print');
  await typeInto(page.getByLabel(englishPlan('kit.print-bar')), '70');
  await page.getByText('70 is too small: 80 mm is the least.').waitFor();
  await typeInto(page.getByLabel(englishPlan('kit.print-bar')), '97');
  await page.getByRole('row', { name: 'Cube edge 5 cm edge 4.85 cm' }).waitFor();
  await page.getByRole('button', { name: englishPlan('kit.print-apply') }).click();
  expect(await hasFocus(page.getByLabel(englishPlan('kit.print-bar')))).toBe(true);
  expect(await sizeField(page, 'cube', 'edge').inputValue()).toBe('4.85');
  await undo.click();
  const undone = englishPlan('kit.undone', { what: englishPlan('kit.did-print', { percent: 97 }) });
  await page.getByText(undone, { exact: true }).waitFor();
  expect(await sizeField(page, 'cube', 'edge').inputValue()).toBe('5.0');
  const { text } = await savedClass(page);
  for (const challenge of [0, 1, 2]) {
    const kinds = kindsIn(text, challenge);
    expect(kinds.at(-1)?.id).toBe('antiprism');
    expect(kinds.find(({ id }) => id === 'cone')).toMatchObject({ stock: 6, crushed: 1 });
  }
  // The shelf of Build has one cone less.
  await openScreen(page, 'build');
  await expect.poll(() => page.locator('[data-kind="cone"] .left').innerText()).toContain('5');
});

it('a kit that was built with keeps its sizes; a group types its own, in inches', async () => {
  const page = await openApp();
  await openDemo(page, 'kit');
  await page.getByText('Groups have built under Tall Light.').waitFor();
  expect(await sizeField(page, 'cube', 'edge').isDisabled()).toBe(true);
  await typeInto(kindRow(page, 'cube').getByLabel('Pieces of this kind: Cube'), '0');
  await page.getByText('old results never change.', { exact: false }).last().waitFor();
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await page.getByRole('button', { name: english('units.in'), exact: true }).click();
  await page.keyboard.press('Escape');
  await unfoldKit(page, 'kit.own');
  await page.locator('.kit-group select').selectOption({ label: 'Terns' });
  const own = page.getByRole('group', { name: 'Terns, Cube' });
  await typeInto(own.getByLabel('edge'), '2 1/16');
  await page.getByText('more than the kit', { exact: false }).waitFor();
  await page.getByRole('button', { name: englishPlan('kit.own-back') }).click();
  expect(await hasFocus(own.getByLabel('edge'))).toBe(true);
  await typeInto(own.getByLabel('edge'), '2 1/16');
  await page.getByText('more than the kit', { exact: false }).waitFor();
  const { text } = await savedClass(page);
  // 2 1/16 inches of 25.4 mm.
  expect(JSON.parse(text).groups[1].measured).toEqual({ cube: { edge: 52.3875 } });
});

it('speaks Spanish, with a decimal comma', async () => {
  const page = await openApp({ locale: 'es-MX' });
  await page.getByRole('button', { name: spanish('start.demo-open') }).click();
  await page.getByRole('link', { name: spanish('tab.kit'), exact: true }).click();
  await page.getByText(spanishPlan('kit.lede')).waitFor();
  expect(await kindRow(page, 'cube').locator('.b').innerText()).toBe('125,0');
});
