// What the same engine says of a try of the demo class in Node, in the words of the screen.

import { demoClass } from '@cairnmark/demo';
import type { Report } from '@cairnmark/engine';
import { evaluate, needsSolver, piecesUsed, USUAL_LIMITS, unitOf } from '@cairnmark/engine';
import type { LinearSolver } from '@cairnmark/geometry';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import { tabPaper } from '@cairnmark/nets';
import { classReader, wordsFor } from '@cairnmark/words';
import { HIGHS } from '../../reference/highs.ts';

const RECORD = demoClass();

/** The verdict's word, its lines, and two of the numbers beside it. */
export function inNode(id: string) {
  const { attempt, challenge, report } = reported(id, HIGHS);
  const ruler = { ...rulerOf(challenge.ruler), unit: 'cm' as const };
  const words = wordsFor('en').inClass(classReader(challenge, RECORD.groups, { ruler, bands: TILT_BANDS, unitOf }));
  const kinds = piecesUsed(attempt.layout);
  const stability = report.stability!;
  const shown = (measure: string, { facts }: Report): string => {
    const fact = facts.find((one) => one.id === measure)?.predicted;
    return fact?.status === 'measured' ? words.amount(measure, fact.value, fact.tolerance) : '–';
  };
  return {
    title: words.stabilityBrief(stability, kinds).title,
    lines: words.stability(stability, kinds).lines,
    height: shown('height', report),
    volume: shown('volume', report),
  };
}

/** Whether a try is judged whole by the large solver alone. */
export const needsLargeSolver = (id: string): boolean => needsSolver(reported(id, null).report);

function reported(id: string, solver: LinearSolver | null) {
  const attempt = RECORD.attempts.find((one) => one.id === id)!;
  const challenge = RECORD.challenges.find((one) => one.id === attempt.challenge)!;
  const group = RECORD.groups.find((one) => one.id === attempt.group)!;
  const result = evaluate(
    attempt,
    { challenge, group, events: [] },
    { solver, limits: USUAL_LIMITS, tabsOf: tabPaper },
  );
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return { attempt, challenge, report: result.value };
}
