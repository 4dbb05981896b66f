// A layout at work: its pieces in a new order, each with the number it had before. Dropped before it is handed on, so that
// nothing is ever edited into a layout that no stack can be built from.

import type { DroppedPieces, LaidPiece, Result, StackIssue } from '@cairnmark/geometry';
import { dropPieces, failure, success } from '@cairnmark/geometry';
import type { Bench, Edited, EditIssue, Pieces } from './types.ts';

export interface Entry {
  readonly laid: LaidPiece;
  /** Its number before; null for a new piece. */
  readonly was: number | null;
  /** True for a piece that the command is about. */
  readonly worked: boolean;
}

export interface DroppedDraft {
  readonly entries: readonly Entry[];
  readonly dropped: DroppedPieces;
}

export const entriesOf = (pieces: Pieces): readonly Entry[] =>
  pieces.map((laid, was) => ({ laid, was, worked: false }));

/** The draft as the answer to a command, or why no stack can be built from it. */
export function finish(
  before: Pieces,
  draft: Result<DroppedDraft, EditIssue>,
  earlier: boolean,
): Result<Edited, EditIssue> {
  if (!draft.ok) return draft;
  const { entries } = draft.value;
  const same = entries.length === before.length && entries.every(({ laid }, index) => laid === before[index]);
  const worked = entries.findIndex((entry) => entry.worked);
  return success({
    pieces: same ? before : entries.map(({ laid }) => laid),
    piece: worked < 0 ? null : worked,
    earlier,
  });
}

/** Drops the pieces in the order they stand in. */
export function dropAsOrdered(entries: readonly Entry[], bench: Bench): Result<DroppedDraft, EditIssue> {
  const dropped = dropOf(entries, bench);
  if (dropped.ok) return success({ entries, dropped: dropped.value });
  return failure(dropped.issues.map((issue) => numberedAsBefore(issue, entries)));
}

/**
 * Drops the pieces; where one has lost its footing and would fall into a piece that was put on the table after it, that
 * one comes before it, and it falls onto it. Pieces that are worked on themselves go nowhere: they are refused.
 */
export function dropInOrder(entries: readonly Entry[], bench: Bench): Result<DroppedDraft, EditIssue> {
  let ordered = entries;
  for (let moves = 0; moves <= entries.length; moves++) {
    const dropped = dropOf(ordered, bench);
    if (dropped.ok) return success({ entries: ordered, dropped: dropped.value });
    const next = beforeWhatFalls(ordered, dropped.issues);
    if (next === null) break;
    ordered = next;
  }
  return dropAsOrdered(entries, bench);
}

const dropOf = (entries: readonly Entry[], { solids, slackMm }: Bench): Result<DroppedPieces, StackIssue> =>
  dropPieces(
    entries.map(({ laid }) => laid),
    solids,
    slackMm,
  );

function beforeWhatFalls(entries: readonly Entry[], issues: readonly StackIssue[]): readonly Entry[] | null {
  for (const { code, path, details } of issues) {
    const [, index] = path;
    const { other } = details;
    if (code !== 'overlaps' || typeof index !== 'number' || typeof other !== 'number') continue;
    const [standing, falling] = [entries[index], entries[other]];
    if (standing === undefined || falling === undefined || standing.worked || falling.worked) continue;
    const rest = entries.filter((entry) => entry !== standing);
    return rest.flatMap((entry) => (entry === falling ? [standing, falling] : [entry]));
  }
  return null;
}

/** The screen still shows the pieces as they were: an issue names them by these numbers. */
function numberedAsBefore(issue: StackIssue, entries: readonly Entry[]): EditIssue {
  const before = (index: number): number => entries[index]?.was ?? entries.length - 1;
  const [list, index, ...field] = issue.path;
  const { other } = issue.details;
  return {
    ...issue,
    path: list !== undefined && typeof index === 'number' ? [list, before(index), ...field] : issue.path,
    details: typeof other === 'number' ? { ...issue.details, other: before(other) } : issue.details,
  };
}
