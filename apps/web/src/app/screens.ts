// The screens that come over the network when they are first opened, by their addresses.

import type { Language } from '@cairnmark/words';
import { loadCardWords, loadPlanWords, loadTalkWords } from '@cairnmark/words';
import type { ComponentType } from 'preact';

export type LoadScreen = () => Promise<ComponentType>;

export const SCREENS: Readonly<Record<string, LoadScreen>> = {
  '/new': async () => (await import('../screens/new/new-class.tsx')).default,
  '/class': async () => (await import('../screens/class/class-plan.tsx')).default,
  '/challenge': async () => (await import('../screens/challenge/challenge-plan.tsx')).default,
  '/kit': async () => (await import('../screens/kit/kit-plan.tsx')).default,
  '/print': async () => (await import('../screens/print/print-plan.tsx')).default,
  '/supply': async () => (await import('../screens/supply/supply-game.tsx')).default,
  '/record': async () => (await import('../screens/record/record-sheet.tsx')).default,
  '/build': async () => (await import('../screens/build/build.tsx')).default,
  '/score': async () => (await import('../screens/score/score-card.tsx')).default,
  '/board': async () => (await import('../screens/board/board.tsx')).default,
  '/fair': async () => (await import('../screens/fair/fair-points.tsx')).default,
};

/**
 * Gets all of them with their words while nothing else is to do, so that a lesson goes on when the network does not: over
 * plain http in a school network no browser keeps the app, and a first visit may be cut off before it is kept. A slow device
 * that works out the class is never idle for long: after IDLE_MS they are fetched in any case.
 */
export function fetchAhead(language: Language): void {
  const fetchAll = (): void => {
    const words = [loadCardWords, loadPlanWords, loadTalkWords].map((load) => () => load(language));
    const all = [...Object.values(SCREENS), ...words];
    for (const load of all) load().catch(() => undefined);
  };
  // Not every browser tells when it is idle.
  if ('requestIdleCallback' in window) requestIdleCallback(fetchAll, { timeout: IDLE_MS });
  else setTimeout(fetchAll, IDLE_MS);
}

const IDLE_MS = 2000;
