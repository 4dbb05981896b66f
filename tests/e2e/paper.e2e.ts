// The paper side of a lesson: what the Print screen saves is what is measured, and what it cannot print it says.

import { demoClass } from '@cairnmark/demo';
import { makeSolid } from '@cairnmark/geometry';
import { USUAL_TAB_DEPTH_MM } from '@cairnmark/nets';
import { netSheets, writePdf } from '@cairnmark/print';
import { printWords } from '@cairnmark/words';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { barsOn } from '../reference/print/bars.ts';
import { pagesOf, printOf, textIn } from '../reference/print/poppler.ts';
import { hasPoppler } from '../tools/poppler.mjs';
import { expectNear } from '../tools/within.ts';
import { downloaded, openDemo } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { englishPlan, spanish, spanishPlan } from './tools/words.ts';

const printed = printWords('en');
const ready = (page: Page) => page.locator('.print-plan[aria-busy="false"]').waitFor({ timeout: 60_000 });
const tick = (page: Page, name: string) => page.getByRole('checkbox', { name: new RegExp(`^${name}`) });

it.skipIf(!hasPoppler())(
  'the nets of the demo are saved as a PDF, the same as from Node, and true to size',
  async () => {
    const page = await openApp();
    await openDemo(page, 'print');
    await ready(page);
    await tick(page, printed.say('print.sheet-measure-older')).uncheck();
    await tick(page, printed.say('print.sheet-rules')).uncheck();
    await page.getByRole('button', { name: englishPlan('printing.arrange-mixed') }).click();
    await ready(page);
    const own = demoNets();
    const save = page.getByRole('button', { name: englishPlan('printing.save', { pages: own.pages }) });
    const { name, bytes } = await downloaded(page, save);
    expect(name).toBe('skerry-light-print.pdf');
    expect(Buffer.compare(bytes, own.pdf)).toBe(0);
    expect(pagesOf(bytes)).toBe(own.pages);
    const last = own.pages - 1;
    const [mm, inches] = barsOn(printOf(bytes, last), own.page(last));
    expectNear(mm, 100, { absolute: 0.05 }, 'the bar of 100 mm');
    expectNear(inches, 50.8, { absolute: 0.05 }, 'the bar of 2 in');
  },
);

it('a sheet that says nothing yet tells why, and pages are turned by the keys', async () => {
  const page = await openApp();
  await openDemo(page, 'print');
  await ready(page);
  const game = page.locator('.print-list > li', { hasText: printed.say('print.sheet-game') });
  await game.getByText(englishPlan('printing.none')).waitFor();
  await tick(page, englishPlan('printing.nets-name')).uncheck();
  await page
    .getByText(englishPlan('printing.page-of', { page: 1, pages: 2, sheet: printed.say('print.sheet-measure-older') }))
    .first()
    .waitFor();
  await page.getByRole('button', { name: englishPlan('printing.next') }).focus();
  await page.keyboard.press('Enter');
  const second = englishPlan('printing.page-of', { page: 2, pages: 2, sheet: printed.say('print.sheet-rules') });
  await page.getByRole('img', { name: second }).waitFor();
  await tick(page, printed.say('print.sheet-measure-older')).uncheck();
  await tick(page, printed.say('print.sheet-rules')).uncheck();
  await page.getByRole('button', { name: englishPlan('printing.open') }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('status').getByText(englishPlan('printing.nothing')).waitFor();
});

it('prints in Spanish, on Letter', async () => {
  const page = await openApp({ locale: 'es-MX' });
  await page.getByRole('button', { name: spanish('start.demo-open') }).click();
  await page.getByRole('link', { name: spanish('tab.print'), exact: true }).click();
  await page.getByRole('button', { name: spanishPlan('printing.paper-letter'), exact: true }).click();
  await ready(page);
  const rules = printWords('es').say('print.sheet-rules');
  await tick(page, spanishPlan('printing.nets-name')).uncheck();
  await page.getByRole('button', { name: spanishPlan('printing.next') }).click();
  await page.getByRole('img', { name: spanishPlan('printing.page-of', { page: 2, pages: 2, sheet: rules }) }).waitFor();
  const save = page.getByRole('button', { name: /PDF/ }).first();
  const { bytes } = await downloaded(page, save);
  if (hasPoppler()) expect(textIn(bytes)).toContain('Exactamente 5 piezas');
});

function demoNets() {
  const { challenges, groups, invented } = demoClass();
  const kinds = challenges[0]!.kit.kinds.flatMap(({ id, name, solid: spec, material }) => {
    const solid = makeSolid(spec);
    return solid.ok && material.kind === 'folded-paper' ? [{ id, name, solid: solid.value, count: groups.length }] : [];
  });
  const order = {
    kinds,
    paper: 'a4',
    arrange: 'mixed',
    tabDepthMm: USUAL_TAB_DEPTH_MM,
    large: 'tell',
    invented,
  } as const;
  const sheets = netSheets(order, printed, () => true);
  if (!sheets.ok || sheets.value === null) throw new Error(JSON.stringify(sheets));
  const { pages } = sheets.value;
  const pdf = writePdf(pages, demoClass().name, 'en');
  if (!pdf.ok) throw new Error(JSON.stringify(pdf.issues));
  return { pages: pages.length, pdf: pdf.value, page: (k: number) => pages[k]! };
}
