// The keyboard alone: which stops Tab makes, whether the focus is seen at each of them, and how to get to one.

import type { Locator, Page } from 'playwright-core';

/** Where the focus is. */
export interface Stop {
  /** Role or tag, then what a screen reader would say: "button Open the demo". */
  readonly name: string;
  /** What is wrong with how the focus shows: null when it is seen. */
  readonly fault: string | null;
}

/** More stops than any screen has: Tab got caught somewhere. */
const MOST_STOPS = 150;

/** The stops of Tab from the head of the page until it comes round, in order. */
export async function tabStops(page: Page): Promise<Stop[]> {
  await toTheHead(page);
  const stops: Stop[] = [];
  for (let presses = 1; presses < MOST_STOPS; presses += 1) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(stopHere, stops.length);
    if (stop !== null) stops.push(stop);
    // From outside an open dialog the first Tab leads to the page itself.
    else if (presses > 1) return stops;
  }
  throw new Error(
    `Tab does not come round: ${stops
      .slice(-5)
      .map(({ name }) => name)
      .join(', ')}`,
  );
}

/** Without it Tab goes on from what was clicked last. */
export const toTheHead = (page: Page): Promise<void> =>
  page.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    getSelection()?.setPosition(document.body, 0);
    document.body.tabIndex = -1;
    document.body.focus();
    document.body.removeAttribute('tabindex');
  });

/** Presses Tab, or Shift and Tab, until the focus is on what is called so ("button Open the demo"). */
export async function tabTo(page: Page, name: string, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  const passed: string[] = [];
  while (passed.length < MOST_STOPS) {
    await page.keyboard.press(key);
    const here = (await page.evaluate(stopHere, -1))?.name ?? 'the page itself';
    if (here === name) return;
    passed.push(here);
  }
  throw new Error(`no stop of Tab is called "${name}"; there are ${[...new Set(passed)].join(', ')}`);
}

/** Tab to it, then press: how a button or a link is used without a mouse. */
export async function pressOn(page: Page, name: string, key = 'Enter'): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press(key);
}

/** Runs in the page. null: the focus is on the page itself, or on a stop that was already counted. */
function stopHere(count: number): Stop | null {
  const at = document.activeElement;
  if (at === null || at === document.body || at === document.documentElement) return null;
  if (count === 0) for (const old of document.querySelectorAll('[data-stop]')) old.removeAttribute('data-stop');
  if (count >= 0) {
    if (at.hasAttribute('data-stop')) return null;
    at.setAttribute('data-stop', String(count));
  }
  const labels = at instanceof HTMLInputElement ? [...(at.labels ?? [])] : [];
  const labelled = (at.getAttribute('aria-labelledby') ?? '').split(' ').map((id) => document.getElementById(id));
  const texts = [at.getAttribute('aria-label'), ...[...labelled, ...labels, at].map((one) => one?.textContent)];
  const said = texts.find((text) => text !== null && text !== undefined && text.trim() !== '') ?? '';
  const role = at.getAttribute('role') ?? (at instanceof HTMLAnchorElement ? 'link' : at.tagName.toLowerCase());

  // A field hidden in its label shows its focus on the label; a button stretched over its row, on what stretches it.
  const shown = [at, at.closest('label')].filter((one) => one !== null);
  const outlines = shown.flatMap((one) => [null, '::before', '::after'].map((part) => getComputedStyle(one, part)));
  const seen = outlines.some((css) => css.outlineStyle !== 'none' && Number.parseFloat(css.outlineWidth) >= 2);
  const boxes = shown.map((one) => one.getBoundingClientRect());
  const inView = boxes.some(
    ({ left, right, top, bottom }) => right > 0 && bottom > 0 && left < innerWidth && top < innerHeight,
  );
  const fault = !seen ? 'no outline of 2 px' : !inView ? 'outside the window' : null;
  return { name: `${role} ${said.replace(/\s+/g, ' ').trim()}`, fault };
}

/** Whether an element has the focus. */
export const hasFocus = (locator: Locator): Promise<boolean> =>
  locator.evaluate((element) => element === document.activeElement);
