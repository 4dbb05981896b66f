// The supply game: its rule, the strokes of the groups' lists, and what a group has from them.

/** How a supply game ends, and what happens on the way. Common practice of such games, no source. */
export interface SupplyRule {
  readonly ends:
    | { readonly kind: 'time'; readonly seconds: number }
    | { readonly kind: 'turns'; readonly turns: number }
    | { readonly kind: 'stock-empty' };
  /** Who takes over when: at a touch of hands, once the piece lies in the group's place, or as the group likes. */
  readonly handOver: 'at-a-touch' | 'once-it-lies' | 'as-the-group-likes';
  /** A piece that is dropped on the way: lost for this turn, to be fetched, or as the carrier likes. */
  readonly dropped: 'lost-this-turn' | 'must-be-fetched' | 'carrier-chooses';
}

/** One stroke on the supply list of a group. */
export interface SupplyEvent {
  readonly id: string;
  readonly group: string;
  readonly what:
    | { readonly kind: 'earned'; readonly piece: string; readonly count: number }
    /** Crushed or gone: neither the group's nor the class's any more. */
    | { readonly kind: 'lost'; readonly piece: string; readonly count: number; readonly reason: string }
    /** Back into the stock of the class. */
    | { readonly kind: 'returned'; readonly piece: string; readonly count: number }
    /** Dropped on the way: it was not earned, and the stock has it still. A piece crushed on the way is earned and lost. */
    | { readonly kind: 'dropped'; readonly piece: string; readonly count: number }
    | { readonly kind: 'penalty'; readonly points: number; readonly reason: string };
  /** Counted from 1; absent where the game has none. */
  readonly round?: number;
  readonly carrier?: string;
  readonly takenBack?: boolean;
}

/** What a group has, from all its events that were not taken back. */
export interface Supply {
  readonly group: string;
  /** Pieces by kind id: earned, less lost, less returned. */
  readonly pieces: Readonly<Record<string, number>>;
  readonly dropped: number;
  readonly lost: number;
  readonly penaltyPoints: number;
  readonly byRound: readonly { readonly round: number; readonly pieces: number }[];
  readonly byCarrier: readonly { readonly carrier: string; readonly pieces: number }[];
}

export type SupplyIssue =
  /** The class has not so many left. The place is the event that went too far. */
  | {
      readonly code: 'stock-exceeded';
      readonly event: number;
      readonly piece: string;
      readonly count: number;
      readonly left: number;
    }
  /** More lost or returned than the group has. */
  | {
      readonly code: 'more-than-the-group-has';
      readonly event: number;
      readonly piece: string;
      readonly count: number;
      readonly has: number;
    };
