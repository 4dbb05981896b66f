// What a supply is worth, as numbers that rows of a points table and rules may ask for.

import type { Supply } from './types.ts';

/** The names of these numbers; all are counts, but for the points of the penalties. */
export const SUPPLY_FACT_IDS = [
  'earned:pieces',
  'earned:kinds',
  'earned:full-sets',
  'earned:faces',
  'earned:flat-faces',
  'earned:curved-surfaces',
  'earned:edges',
  'earned:corners',
  'earned:penalties',
] as const;

export type SupplyFactId = (typeof SUPPLY_FACT_IDS)[number];

/** One piece of a kind, as the challenge counts its faces, edges and corners. */
export interface PieceCounts {
  readonly id: string;
  readonly flatFaces: number;
  readonly curvedSurfaces: number;
  readonly faces: number;
  readonly edges: number;
  readonly corners: number;
}

/** Of the pieces that the group has. `kinds`: every kind of the kit; a full set is one piece of each. */
export function supplyFactValues(
  { pieces, penaltyPoints }: Supply,
  kinds: readonly PieceCounts[],
): Record<SupplyFactId, number> {
  const all = kinds.map((each) => ({ each, count: Object.hasOwn(pieces, each.id) ? (pieces[each.id] ?? 0) : 0 }));
  const counts = all.map(({ count }) => count);
  const sum = (of: (each: PieceCounts) => number): number =>
    all.reduce((total, { each, count }) => total + count * of(each), 0);
  return {
    'earned:pieces': sum(() => 1),
    'earned:kinds': counts.filter((count) => count > 0).length,
    'earned:full-sets': counts.length === 0 ? 0 : Math.min(...counts),
    'earned:faces': sum(({ faces }) => faces),
    'earned:flat-faces': sum(({ flatFaces }) => flatFaces),
    'earned:curved-surfaces': sum(({ curvedSurfaces }) => curvedSurfaces),
    'earned:edges': sum(({ edges }) => edges),
    'earned:corners': sum(({ corners }) => corners),
    'earned:penalties': penaltyPoints,
  };
}
