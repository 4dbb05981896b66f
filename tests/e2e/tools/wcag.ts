// What is wrong with a page by single criteria of WCAG, each as a list that is empty when nothing is.

import type { Locator, Page } from 'playwright-core';
import { toTheHead } from './keyboard.ts';

/** Texts of which a part cannot be seen, for the box that holds them is too small and does not scroll (1.4.4, 1.4.12). */
export const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('#app *')]
      .filter((one) => one instanceof HTMLElement && one.checkVisibility() && one.closest('.vh, .skip, svg') === null)
      .filter((one) => {
        // Of one pixel: meant for the ear alone.
        if (one.clientWidth <= 1) return false;
        const { overflowX, overflowY } = getComputedStyle(one);
        const hides = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip';
        const wide = hides(overflowX) && one.scrollWidth > one.clientWidth + 1;
        const high = hides(overflowY) && one.scrollHeight > one.clientHeight + 1;
        return (wide || high) && one.textContent.trim() !== '';
      })
      .map((one) => `${one.tagName.toLowerCase()}.${one.className}: ${one.textContent.trim().slice(0, 40)}`),
  );

/** Rules of the Score card without a drawn sign or without a word for it (1.4.1). */
export const rulesWithoutSign = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const rules = [...document.querySelectorAll('.card-rules li')];
    if (rules.length === 0) return ['no rules'];
    return rules
      .filter(
        (one) => one.querySelector('svg.ic') === null || !/\w+: /.test(one.querySelector('.vh')?.textContent ?? ''),
      )
      .map((one) => one.textContent);
  });

/** Pressed choices that differ from their neighbours by colours alone (1.4.1). */
export const pressedByColourAlone = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.seg > [aria-pressed="true"]')]
      .filter((one) => one.checkVisibility())
      .filter((one) => {
        const other = one.parentElement?.querySelector('[aria-pressed="false"]');
        if (!other) return false;
        const shape = (node: Element): string => {
          const { borderWidth, boxShadow, fontWeight, textDecorationLine } = getComputedStyle(node);
          return [borderWidth, boxShadow === 'none', fontWeight, textDecorationLine].join();
        };
        return shape(one) === shape(other);
      })
      .map((one) => one.textContent),
  );

/** Pressed choices that do not take the system's colour of what is chosen, when the system sets all colours. */
export const pressedAlike = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const probe = document.body.appendChild(document.createElement('div'));
    probe.style.cssText = 'forced-color-adjust: none; background: Highlight';
    const chosen = getComputedStyle(probe).backgroundColor;
    probe.remove();
    return [...document.querySelectorAll('.seg > [aria-pressed="true"], .btn[aria-pressed="true"]')]
      .filter((one) => one.checkVisibility() && getComputedStyle(one).backgroundColor !== chosen)
      .map((one) => one.textContent);
  });

/** Frames of buttons and fields under 3:1 against what is behind them (1.4.11). */
export const faintFrames = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const channels = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const light = (colour: string): number => {
      const [r = 0, g = 0, b = 0] = channels(colour).map((c) =>
        c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4,
      );
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const behind = (node: Element | null): string => {
      for (let at = node; at !== null; at = at.parentElement) {
        const { backgroundColor } = getComputedStyle(at);
        if (channels(backgroundColor)[3] !== 0) return backgroundColor;
      }
      return 'rgb(255, 255, 255)';
    };
    return [...document.querySelectorAll('.card .btn, .card .in, .card .seg')]
      .filter((one) => one.checkVisibility() && Number.parseFloat(getComputedStyle(one).borderTopWidth) > 0)
      .filter((one) => channels(getComputedStyle(one).borderTopColor)[3] !== 0)
      .flatMap((one) => {
        const [a, b] = [light(getComputedStyle(one).borderTopColor), light(behind(one.parentElement))];
        const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        return ratio >= 3 ? [] : [`${one.className} "${one.textContent.trim().slice(0, 20)}": ${ratio.toFixed(2)}`];
      });
  });

/** Titles that only a mouse finds, and styles that show something while it is pointed at (1.4.13). */
export const shownOnHover = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const titled = [...document.querySelectorAll('#app [title]')].map(
      (one) => `title of ${one.outerHTML.slice(0, 60)}`,
    );
    const styled = [...document.styleSheets]
      .flatMap((sheet) => [...sheet.cssRules])
      .flatMap((rule) => ('cssRules' in rule ? [rule, ...(rule as CSSGroupingRule).cssRules] : [rule]))
      .filter((rule) => rule instanceof CSSStyleRule && rule.selectorText.includes(':hover'))
      .map((rule) => rule.cssText)
      .filter((text) => /\b(display|visibility|content|opacity|max-height|clip-path):/.test(text));
    return [...titled, ...styled];
  });

const CONTROLS = '#app button, #app a[href], #app input, #app select, #app summary';

/** Controls in sight that tabStops did not come by (2.1.1). */
export const notReached = (page: Page): Promise<string[]> =>
  page.evaluate(
    (controls) =>
      [...document.querySelectorAll(controls)]
        .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.hasAttribute('data-stop'))
        .filter((one) => one.closest('dialog:not([open])') === null)
        .map((one) => one.outerHTML.slice(0, 80)),
    CONTROLS,
  );

/** Stops that come before what stands before them (2.4.3); after tabStops. */
export const stopsOutOfOrder = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const stops = [...document.querySelectorAll('[data-stop]')];
    const numbers = stops.map((one) => Number(one.getAttribute('data-stop')));
    return stops
      .filter((_, k) => k > 0 && (numbers[k] ?? 0) < (numbers[k - 1] ?? 0))
      .concat([...document.querySelectorAll('[tabindex]')].filter((one) => Number(one.getAttribute('tabindex')) > 0))
      .map(({ outerHTML }) => outerHTML.slice(0, 80));
  });

/** Stops of Tab of which no corner and not the middle can be seen, for something else lies over them (2.4.11). */
export async function hiddenStops(page: Page): Promise<string[]> {
  await toTheHead(page);
  const count = await page.evaluate(
    (controls) => [...document.querySelectorAll(controls)].filter((one) => one.checkVisibility()).length,
    CONTROLS,
  );
  const hidden: string[] = [];
  for (let k = 0; k < count; k += 1) {
    await page.keyboard.press('Tab');
    const fault = await page.evaluate(() => {
      const at = document.activeElement;
      if (at === null || at === document.body) return null;
      const shown = at.closest('label') ?? at;
      const { left, top, width, height } = shown.getBoundingClientRect();
      const points = [0.1, 0.5, 0.9].flatMap((x) => [0.1, 0.5, 0.9].map((y) => [left + x * width, top + y * height]));
      const seen = points.some(([x = 0, y = 0]) => {
        const over = document.elementFromPoint(x, y);
        return shown.contains(over);
      });
      return seen ? null : at.outerHTML.slice(0, 80);
    });
    if (fault !== null) hidden.push(fault);
  }
  return hidden;
}

/** What would still move for longer than a hundredth of a second (2.3.3). */
export const moving = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('#app, #app *')]
      .filter((one) => {
        const { transitionDuration, animationDuration, scrollBehavior } = getComputedStyle(one);
        const longest = Math.max(...`${transitionDuration}, ${animationDuration}`.split(', ').map(Number.parseFloat));
        return longest > 0.01 || scrollBehavior === 'smooth';
      })
      .map((one) => one.outerHTML.slice(0, 60)),
  );

/** What a field is described by (3.3.1). */
export const described = (field: Locator): Promise<string> =>
  field.evaluate((node) =>
    (node.getAttribute('aria-describedby') ?? node.getAttribute('aria-errormessage') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent ?? '')
      .join(' '),
  );
