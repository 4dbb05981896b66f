// What a supply is worth: the rows of the points table that ask for supply facts, out of the engine's own facts.

import type { Challenge, Group } from '@cairnmark/engine';
import { pieceCounts, supplyFacts } from '@cairnmark/engine';
import type { PointsLine, PointsRow, Supply, SupplyFactId } from '@cairnmark/scoring';
import { pointsLines, SUPPLY_FACT_IDS, supplyFactValues } from '@cairnmark/scoring';

export interface Worth {
  readonly lines: readonly { readonly row: PointsRow; readonly line: PointsLine }[];
  readonly total: number | null;
}

export function worthOf(supply: Supply, challenge: Challenge, group: Group): Worth {
  const rows = challenge.points.filter(({ measure }) => isSupplyFact(measure));
  const facts = new Map(supplyFacts(supply, challenge, group).map((fact) => [fact.id, fact]));
  const { lines, sum } = pointsLines(rows, facts);
  const paired = rows.flatMap((row, k) => {
    const line = lines[k];
    return line === undefined ? [] : [{ row, line }];
  });
  return { lines: paired, total: sum };
}

/** What is counted of every piece. */
export type CountedFact = Extract<
  SupplyFactId,
  'earned:faces' | 'earned:flat-faces' | 'earned:curved-surfaces' | 'earned:edges' | 'earned:corners'
>;

const COUNTED: readonly CountedFact[] = [
  'earned:faces',
  'earned:flat-faces',
  'earned:curved-surfaces',
  'earned:edges',
  'earned:corners',
];

/** Those that points are given for; where none are, faces, edges and corners. */
export function countedFacts({ points }: Challenge): readonly CountedFact[] {
  const asked = COUNTED.filter((fact) => points.some(({ measure }) => measure === fact));
  return asked.length > 0 ? asked : ['earned:faces', 'earned:edges', 'earned:corners'];
}

export interface Counting {
  readonly kinds: readonly {
    readonly kind: string;
    readonly pieces: number;
    readonly each: number;
    readonly all: number;
  }[];
  readonly together: number;
}

/** How a fact of a supply comes about, kind by kind of which the group has any. */
export function countingOf(fact: CountedFact, supply: Supply, challenge: Challenge, group: Group): Counting {
  const counts = pieceCounts(challenge, group);
  const of = (pieces: Supply['pieces']): number => supplyFactValues({ ...supply, pieces }, counts)[fact];
  const kinds = Object.entries(supply.pieces)
    .filter(([, pieces]) => pieces > 0)
    .map(([kind, pieces]) => ({ kind, pieces, each: of({ [kind]: 1 }), all: of({ [kind]: pieces }) }));
  return { kinds, together: of(supply.pieces) };
}

const isSupplyFact = (measure: string): boolean => SUPPLY_FACT_IDS.some((id) => id === measure);
