// What people decided at a challenge: values set, values taken back, points given or taken by hand.

import type { Attempt } from '@cairnmark/engine';
import { decisionsMade } from '@cairnmark/engine';
import type { Board } from './boards.ts';

/** One line a decision, with the group first; attempts of other challenges are left out. */
export function decisionLines(board: Board, attempts: readonly Attempt[]): readonly string[] {
  return attempts
    .filter(({ challenge }) => challenge === board.challenge.id)
    .flatMap((attempt) =>
      ofAttempt(attempt, board).map((sentence) => `${board.reader.groupName(attempt.group)}: ${sentence}`),
    );
}

function ofAttempt({ id, decisions, adjustments }: Attempt, { words, reports }: Board): readonly string[] {
  const facts = reports.find(({ attempt }) => attempt === id)?.facts ?? [];
  return [
    ...decisionsMade(decisions).map((made) =>
      words.decision(made, facts.find(({ id }) => id === made.decision.measure) ?? null),
    ),
    ...adjustments.map((adjustment) => words.adjustment(adjustment)),
  ];
}
