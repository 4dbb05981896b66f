// What every part of the Supply screen works with: whose list, the strokes, what the group has, the words, how to change.

import type { SolidsByKind } from '@cairnmark/geometry';
import type { Supply, SupplyEvent, SupplyRule } from '@cairnmark/scoring';
import type { PlanWords } from '@cairnmark/words';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { Change } from '../../store/class-changes.ts';
import type { AtList } from '../../store/supply-changes.ts';
import type { At } from '../../store/where-at.ts';
import type { GameMemory } from './game-memory.ts';

export interface Game extends BuildWords {
  readonly at: At;
  readonly rule: SupplyRule;
  readonly say: PlanWords['say'];
  /** Of all groups, in their order. */
  readonly events: readonly SupplyEvent[];
  /** Of the group at work. */
  readonly supply: Supply;
  /** Pieces that the class can still hand out, by kind id; and with those that are crushed. */
  readonly left: Readonly<Record<string, number>>;
  readonly allLeft: Readonly<Record<string, number>>;
  readonly solids: SolidsByKind;
  /** px a mm of the drawings: one for the whole kit. */
  readonly scale: number;
  readonly memory: GameMemory;
  readonly remember: (memory: GameMemory) => void;
  /** Where a new stroke goes. */
  readonly list: AtList;
  readonly over: boolean;
  /** The teacher and measurers give penalties, take pieces back into the class and go on after the end. */
  readonly inCharge: boolean;
  /** The game is over, for whoever has the device: no group gets a piece more. */
  readonly closed: boolean;
  /** The last thing that could not be done, and where that is told. */
  readonly told: Told | null;
  readonly tell: (told: Told | null) => void;
  /** Does a change; where nothing came of it, tells why beside `place`. */
  readonly make: (place: string, change: Change, whyNot: string) => boolean;
}

export interface Told {
  readonly place: string;
  readonly text: string;
}

export const GameContext = createContext<Game | null>(null);

export function useGame(): Game {
  const game = useContext(GameContext);
  if (game === null) throw new RangeError('no supply game above this part');
  return game;
}
