// What every part of the score card works with: the try, its report, the words, and who is at the card.

import type { Attempt, Report } from '@cairnmark/engine';
import type { CardWords } from '@cairnmark/words';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { Person } from '../../parts/use-person.ts';
import type { At } from '../../store/where-at.ts';
import type { Bill } from './bill.ts';
import type { ScoreLines } from './lines.ts';
import type { CoveringHere } from './use-ours-first.ts';

export interface Card extends BuildWords {
  readonly say: CardWords['say'];
  readonly at: At & { readonly attempt: Attempt };
  /** Which try it is, counted from 1. */
  readonly number: number;
  /** Of this try; it may be a moment old. */
  readonly report: Report;
  readonly lines: ScoreLines;
  readonly bill: Bill;
  /** Of all tries of all groups at the challenge; null until they are scored. */
  readonly reports: readonly Report[] | null;
  /** The other tries are still being worked out. */
  readonly placing: boolean;
  readonly person: Person;
  /** What stays covered until the group has entered its own result. */
  readonly covering: CoveringHere;
}

export const CardContext = createContext<Card | null>(null);

export function useCard(): Card {
  const card = useContext(CardContext);
  if (card === null) throw new RangeError('no score card above this part');
  return card;
}
