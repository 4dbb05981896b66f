// The tabs of printed nets as the judgement of a build takes them: how much paper they add to a piece, and where.

import type { Solid, TabPaper, TabsOf } from '@cairnmark/geometry';
import { add3, scale3 } from '@cairnmark/geometry';
import { makeNet } from './make-net.ts';
import type { NetTab } from './net.ts';
import { meanOverTurns } from './symmetry.ts';
import { USUAL_TAB_DEPTH_MM } from './tolerance.ts';

/**
 * The tabs of the usual net of a solid. Nobody knows on which of its like sides a piece was put down, so tabs count where
 * they are in the mean over all the ways in which the piece looks the same: a cube's in its middle, a pyramid's on its
 * upright axis. An open piece is the same net with its base, and the tabs there, cut away. null: nobody folds this solid, or it has no tabs.
 */
export function tabPaper(solid: Solid, base: 'closed' | 'open'): TabPaper | null {
  const net = makeNet(solid, { tabDepthMm: USUAL_TAB_DEPTH_MM });
  if (!net.ok) return null;
  const tabs = net.value.parts.flatMap((part) => part.tabs).filter((tab) => base === 'closed' || !isAtBase(tab));
  const areaMm2 = tabs.reduce((sum, tab) => sum + tab.areaMm2, 0);
  if (areaMm2 === 0) return null;
  const moment = tabs.map(({ centroid, areaMm2: share }) => scale3(centroid, share)).reduce(add3, [0, 0, 0]);
  return { areaMm2, centre: meanOverTurns(solid, scale3(moment, 1 / areaMm2), base) };
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

/** The first flat face of a solid is its base. */
const BASE = 0;
const isAtBase = ({ host, mate }: NetTab): boolean => host === BASE || mate === BASE;
