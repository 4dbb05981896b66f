// Challenges that are ready to run with any kit. Their names are words of the class's language, and are handed in.

import { CONTACT_MM, MM_PER_CM, MM_PER_INCH, rulerOf } from '@cairnmark/geometry';
import type { Challenge, GradePreset, Kit } from '../types.ts';
import type { ReadyId } from './plans.ts';
import { READY } from './plans.ts';
import { presetOf, rulerFor } from './presets.ts';

/** `pieces`: how many a build may have, where the challenge counts them; null: as many as are usual for it. */
export const readyChallenge = (id: ReadyId, name: string, kit: Kit, pieces: number | null): Challenge =>
  readyChallengeFor(id, name, kit, pieces, { units: 'cm' });

/** The same for a class of another grade (without one: of its own), or one that measures in inches. */
export function readyChallengeFor(
  id: ReadyId,
  name: string,
  kit: Kit,
  pieces: number | null,
  { grade = READY[id].grade, units }: { readonly grade?: GradePreset; readonly units: 'cm' | 'in' },
): Challenge {
  const { labels, usualPieces, plan } = READY[id];
  const { pi, hidden } = presetOf(grade);
  const ruler = rulerFor(grade, units);
  const steps = { lengthMm: rulerOf(ruler).stepMm, unitMm: units === 'in' ? MM_PER_INCH : MM_PER_CM };
  const { first, tieBreaks = [], points = [], requirements = [] } = plan(pieces ?? usualPieces, steps);
  const asked = new Set([first.by, ...tieBreaks.map(({ by }) => by), ...points.map(({ measure }) => measure)]);
  return {
    id,
    name,
    kit,
    gradePreset: grade,
    ruler,
    counting: 'flat-and-curved-apart',
    base: 'outline-of-pieces-on-table',
    gapAllowanceMm: CONTACT_MM,
    slackMm: SLACK_OF_PAPER_MM,
    heightCounts: ['ruler', 'photo', 'model'],
    measuringErrorMm: READING_ERROR_MM,
    criteria: [],
    points,
    requirements,
    ranking: { first, tieBreaks },
    attemptCounts: 'best',
    fallen: { counts: 'out' },
    own: { pi, closeShare: CLOSE_SHARE, rewards: [] },
    supply: null,
    hidden: hidden.filter((measure) => !asked.has(measure)),
    labels,
  };
}

/** mm; share: what a class starts from. Common practice, no source. */
const SLACK_OF_PAPER_MM = 2;
const READING_ERROR_MM = 3;
const CLOSE_SHARE = 0.05;
