// What the parts of Fair points share: the kit as the lab sees it, the points that are tried, and the words.

import type { LabKit, LabRow } from '@cairnmark/engine';
import type { CountingConvention } from '@cairnmark/geometry';
import type { Earnings } from '@cairnmark/scoring';
import type { TalkWords } from '@cairnmark/words';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { At } from '../../store/where-at.ts';

/** What the points are held against. */
export type Cost = 'piece' | 'paper' | 'minutes';

export interface Lab extends BuildWords {
  readonly at: At;
  readonly say: TalkWords['say'];
  readonly kit: LabKit;
  readonly counting: CountingConvention;
  readonly count: (counting: CountingConvention) => void;
  /** Points in the bars now, in the order of the rows. */
  readonly rates: readonly number[];
  readonly today: readonly number[];
  /** Measures of today's points that one piece has nothing of. */
  readonly others: readonly string[];
  /** Puts points into the bars; rows by id, those that are not named get none. */
  readonly tryRates: (rates: Readonly<Record<string, number>>) => void;
  readonly earnings: Earnings;
  readonly cost: Cost;
  readonly holdAgainst: (cost: Cost) => void;
  readonly minutes: Readonly<Record<string, number>>;
  readonly setMinutes: (kind: string, minutes: number | null) => void;
}

export const LabContext = createContext<Lab | null>(null);

export function useLab(): Lab {
  const lab = useContext(LabContext);
  if (lab === null) throw new RangeError('no points lab above this part');
  return lab;
}

/** Rows by id with their rates, those of 0 left out. */
export const named = (rows: readonly { readonly id: string }[], rates: readonly number[]): Record<string, number> =>
  Object.fromEntries(rows.flatMap(({ id }, j) => (rates[j] ? [[id, rates[j]]] : [])));

/** "Height, each 1 cm". */
export const rowText = ({ id, per }: LabRow, { words, inClass, say }: Lab): string => {
  const measure = words.capital(inClass.label(id));
  return per === 1 ? measure : say('lab.row-of', { measure, per: inClass.exactAmount(id, per) });
};
