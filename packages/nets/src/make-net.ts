// From a solid to its net.

import type { Result, Solid } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import { netFits } from './fit/fits.ts';
import type { Frame } from './fit/frame.ts';
import type { Net, NetIssue, NetOptions, NetPart } from './net.ts';
import { roundParts } from './round/round-parts.ts';
import { flatParts } from './tabs/flat-parts.ts';
import { TAPE_BELOW_MM } from './tolerance.ts';
import { RECIPES } from './trees/catalogue.ts';
import { treesFor } from './trees/trees-for.ts';
import { bestOn, sheetsOf } from './unfold/choose.ts';
import { faceTable } from './unfold/faces.ts';
import type { Sheet } from './unfold/unfold.ts';

/**
 * The net of `solid`, with a tab on one side of every cut edge. Refused with `no-net` for what nobody folds. Throws
 * RangeError for a tab depth that is no positive length.
 */
export function makeNet(solid: Solid, options: NetOptions): Result<Net, NetIssue> {
  const { tabDepthMm, frame } = options;
  const base = solid.centroids.openShell === null ? 'closed' : (options.base ?? 'closed');
  const asked: Asked = { solid, tabDepthMm, base };
  if (!(tabDepthMm > 0 && Number.isFinite(tabDepthMm))) throw new RangeError(`a tab is not ${tabDepthMm} mm deep`);
  const recipe = RECIPES[solid.id];
  switch (recipe.kind) {
    case 'none':
      return failure([{ code: 'no-net', path: [], details: { solid: solid.id } }]);
    case 'round':
      return success(netOf(asked, roundParts(solid, tabDepthMm, base), []));
    case 'faces': {
      const table = faceTable(solid);
      const { usual, others } = sheetsOf(table, treesFor(recipe, table, base));
      const net = (sheet: Sheet): Net => netOf(asked, flatParts(table, [sheet], tabDepthMm), sheet.lids);
      return success(onPage(net(usual), frame, others, net));
    }
  }
}

/** What a net was asked for; a net itself says it too. */
export type Asked = Pick<Net, 'solid' | 'tabDepthMm' | 'base'>;

/** A net of these parts. */
export function netOf({ solid, tabDepthMm, base }: Asked, parts: readonly NetPart[], lids: readonly number[]): Net {
  const tabs = parts.flatMap((part) => part.tabs);
  const total = (areas: readonly { readonly areaMm2: number }[]): number =>
    areas.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
  return {
    solid,
    parts,
    paperMm2: total(parts.flatMap(({ faces }) => faces)),
    tabsMm2: total(tabs),
    lids,
    tooSmallTabs: tabs.some(({ depthMm }) => depthMm < TAPE_BELOW_MM),
    tabDepthMm,
    base,
  };
}

/** The usual net, or another one where a page is given that the usual one does not fit and the other does. */
function onPage(usual: Net, frame: Frame | undefined, others: readonly Sheet[], net: (sheet: Sheet) => Net): Net {
  if (frame === undefined || netFits(usual, frame)) return usual;
  for (const sheet of bestOn(others, frame.widthMm, frame.heightMm).slice(0, MOST_TRIES)) {
    const other = net(sheet);
    if (netFits(other, frame)) return other;
  }
  return usual;
}

/** Those with most room without tabs are tried first; one that is far behind does not overtake with its tabs. */
const MOST_TRIES = 3;
