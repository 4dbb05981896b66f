// Strokes of the supply lists. No stroke is ever deleted: one that was wrong is marked as taken back and counts nowhere. A
// change that would hand out more than the class has, or take away what a group has not, leaves the class as it was.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { stockOf } from '@cairnmark/engine';
import type { SupplyEvent, SupplyIssue, SupplyRule } from '@cairnmark/scoring';
import { supplyIssues } from '@cairnmark/scoring';
import { changeChallenge } from './challenge-changes.ts';
import { isLocked } from './challenge-lock.ts';
import type { Change } from './class-changes.ts';
import { idFor } from './ids.ts';
import { withSupply } from './rule-settings.ts';

export type What = SupplyEvent['what'];

/** Whose list a stroke is on, and when it is made. */
export interface AtList {
  readonly challenge: string;
  readonly group: string;
  /** Counted from 1. */
  readonly round: number;
  /** A role or a number; null: not told. */
  readonly carrier: string | null;
}

/** One more stroke. */
export const withStroke = (at: AtList, what: What): Change =>
  changing(at.challenge, (events) => [...events, strokeOf(events, at, what)]);

/** The pieces of one stroke count no more. */
export const withoutStroke = (challenge: string, id: string): Change =>
  changing(challenge, (events) => events.map((event) => (event.id === id ? back(event) : event)));

/** Takes back one piece of the last stroke that `matches` and may go: of the round at work first, then of any other. */
export const withOneLess =
  (at: AtList, matches: (what: What) => boolean): Change =>
  (record) => {
    const own = eventsOf(record, at.challenge)
      .filter(({ group, what, takenBack }) => group === at.group && takenBack !== true && matches(what))
      .reverse();
    const now = own.filter(({ round }) => round === at.round);
    for (const stroke of [...now, ...own.filter((one) => !now.includes(one))]) {
      const after = changing(at.challenge, (events) => oneLess(events, stroke))(record);
      if (after !== record) return after;
    }
    return record;
  };

/** Sets or ends the supply game of a challenge, where its rules may change; not while strokes stand on a list. */
export const withGame =
  (challenge: string, supply: SupplyRule | null): Change =>
  (record) => {
    const strokes = eventsOf(record, challenge).length;
    if (isLocked(record, challenge) || strokes > 0) return record;
    return changeChallenge(challenge, withSupply(supply))(record);
  };

export const eventsOf = ({ supplies }: ClassRecord, challenge: string): readonly SupplyEvent[] =>
  (Object.hasOwn(supplies, challenge) ? supplies[challenge] : undefined) ?? NO_STROKES;

/** Why a stroke cannot be taken back: what would then be wrong with a later one; null: it can. */
export function whyNotBack(events: readonly SupplyEvent[], id: string, challenge: Challenge): SupplyIssue | null {
  const after = events.map((event) => (event.id === id ? back(event) : event));
  return supplyIssues(after, stockOf(challenge))[0] ?? null;
}

/** The last round that a stroke tells of; 1 where none does. */
export const lastRound = (events: readonly SupplyEvent[]): number =>
  events.reduce((last, { round }) => Math.max(last, round ?? 1), 1);

const NO_STROKES: readonly SupplyEvent[] = [];

const back = (event: SupplyEvent): SupplyEvent => ({ ...event, takenBack: true });

function changing(challenge: string, change: (events: readonly SupplyEvent[]) => readonly SupplyEvent[]): Change {
  return (record) => {
    const of = record.challenges.find(({ id }) => id === challenge);
    if (of === undefined || of.supply === null) return record;
    const after = change(eventsOf(record, challenge));
    if (supplyIssues(after, stockOf(of)).length > 0) return record;
    return { ...record, supplies: { ...record.supplies, [challenge]: after } };
  };
}

function strokeOf(events: readonly SupplyEvent[], at: Omit<AtList, 'challenge'>, what: What): SupplyEvent {
  const { group, round, carrier } = at;
  const number = events.filter((event) => event.group === group).length + 1;
  const taken = events.map(({ id }) => id);
  const id = idFor(`${group}-${number}`, taken, 'stroke');
  return { id, group, what, round, ...(carrier === null ? {} : { carrier }) };
}

/** What is left of a stroke of several pieces stands right behind it, as a stroke of its own. */
function oneLess(events: readonly SupplyEvent[], stroke: SupplyEvent): readonly SupplyEvent[] {
  const { what, group, round, carrier } = stroke;
  const rest = what.kind === 'penalty' || what.count === 1 ? null : { ...what, count: what.count - 1 };
  return events.flatMap((event): readonly SupplyEvent[] => {
    if (event.id !== stroke.id) return [event];
    if (rest === null) return [back(event)];
    const { id } = strokeOf(events, { group, round: 1, carrier: null }, rest);
    const now = { id, group, what: rest, ...(round === undefined ? {} : { round }) };
    return [back(event), carrier === undefined ? now : { ...now, carrier }];
  });
}
