// The tabs of printed nets as the judgement of a build takes them: how much paper they add to a piece, and where.

import type { Solid, TabPaper, TabsOf } from '@cairnmark/geometry';
import { meanOverTurns } from './symmetry.ts';
import { tabsOf } from './tabs-of.ts';
import { USUAL_TAB_DEPTH_MM } from './tolerance.ts';

/**
 * The tabs of the usual net of a solid. Nobody knows on which of its like sides a piece was put down, so tabs count where
 * they are in the mean over all the ways in which the piece looks the same: a cube's in its middle, a pyramid's on its
 * upright axis. An open piece has the net without its base. null: nobody folds this solid, or it has no tabs.
 */
export function tabPaper(solid: Solid, base: 'closed' | 'open'): TabPaper | null {
  const tabs = tabsOf(solid, { tabDepthMm: USUAL_TAB_DEPTH_MM, base });
  if (!tabs.ok || tabs.value.areaMm2 === 0) return null;
  const { areaMm2, centroid } = tabs.value;
  return { areaMm2, centre: meanOverTurns(solid, centroid, base) };
}

/** The same, which unfolds each size once. */
export function rememberedTabPaper(): TabsOf {
  const known = new Map<string, TabPaper | null>();
  return (solid, base) => {
    const key = `${solid.id} ${JSON.stringify(solid.sizes)} ${base}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const found = tabPaper(solid, base);
    known.set(key, found);
    return found;
  };
}
