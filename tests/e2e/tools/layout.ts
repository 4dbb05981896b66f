// How a page is laid out: no scrolling sideways, and targets that a finger hits.

import type { Page } from 'playwright-core';

const TARGETS =
  'button, a[href], input, select, textarea, summary, label, [role="button"], [role="slider"], [tabindex="0"]';
const SMALLEST_PX = 44;

/** What sticks out of the window sideways; empty when the page needs no scrolling that way (WCAG 1.4.10). */
export async function overflowing(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const outside = [...document.body.querySelectorAll('*')].filter(
      (one) => one.getBoundingClientRect().right > clientWidth + 1,
    );
    const names = outside.slice(0, 5).map((one) => `${one.tagName.toLowerCase()}.${one.getAttribute('class') ?? ''}`);
    return [`${scrollWidth} px wide in a window of ${clientWidth}`, ...names];
  });
}

/**
 * Targets in sight under 44 x 44 px (WCAG 2.5.5; 2.5.8 asks for 24). Left out: links within a sentence, and fields that
 * stand in a label, whose target is the label.
 */
export async function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(
    ([targets, smallest]) =>
      [...document.querySelectorAll(targets)]
        .filter((one) => one.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true }))
        .filter((one) => !(one instanceof HTMLLabelElement && one.control === null))
        .filter((one) => !one.matches('p a, li a, label input, label select, .skip:not(:focus)'))
        // A label beside its field is a second target for it, never the only one.
        .filter((one) => !(one instanceof HTMLLabelElement && !one.contains(one.control)))
        .map((one) => ({ one, box: one.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && Math.min(box.width, box.height) < smallest - 0.5)
        .map(({ one, box }) => {
          const text = (one.getAttribute('aria-label') ?? one.textContent).trim();
          return `${one.tagName.toLowerCase()} "${text}" is ${box.width.toFixed(1)} x ${box.height.toFixed(1)} px`;
        }),
    [TARGETS, SMALLEST_PX] as const,
  );
}
