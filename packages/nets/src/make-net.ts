// From a solid to its net.

import type { Result, Solid } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { Net, NetIssue, NetOptions, NetPart } from './net.ts';
import { roundParts } from './round/round-parts.ts';
import { flatParts } from './tabs/flat-parts.ts';
import { TAPE_BELOW_MM } from './tolerance.ts';
import { RECIPES } from './trees/catalogue.ts';
import { chooseSheet } from './unfold/choose.ts';
import { faceTable } from './unfold/faces.ts';

/**
 * The net of `solid`, with a tab on one side of every cut edge. Refused with `no-net` for what nobody folds. Throws
 * RangeError for a tab depth that is no positive length.
 */
export function makeNet(solid: Solid, options: NetOptions): Result<Net, NetIssue> {
  const { tabDepthMm } = options;
  if (!(tabDepthMm > 0 && Number.isFinite(tabDepthMm))) throw new RangeError(`a tab is not ${tabDepthMm} mm deep`);
  const recipe = RECIPES[solid.id];
  switch (recipe.kind) {
    case 'none':
      return failure([{ code: 'no-net', path: [], details: { solid: solid.id } }]);
    case 'round':
      return success(netOf(solid, roundParts(solid, tabDepthMm), tabDepthMm));
    case 'faces': {
      const table = faceTable(solid);
      const sheet = chooseSheet(table, recipe.trees(table));
      return success(netOf(solid, flatParts(table, [sheet], tabDepthMm), tabDepthMm));
    }
  }
}

/** A net of these parts. */
export function netOf(solid: Solid, parts: readonly NetPart[], tabDepthMm: number): Net {
  const tabs = parts.flatMap((part) => part.tabs);
  const total = (areas: readonly { readonly areaMm2: number }[]): number =>
    areas.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
  return {
    solid,
    parts,
    paperMm2: total(parts.flatMap(({ faces }) => faces)),
    tabsMm2: total(tabs),
    tooSmallTabs: tabs.some(({ depthMm }) => depthMm < TAPE_BELOW_MM),
    tabDepthMm,
  };
}
