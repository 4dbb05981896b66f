// A class of twelve groups at Tall Light, each with a build of the demo class and a reading of its own: enough for a box plot.

import { demoClass } from '@cairnmark/demo';
import type { GradePreset } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import type { RulerId } from '@cairnmark/geometry';

/** Its class file. The heights in mm are invented; two of them are alike. */
export function twelveGroups(gradePreset: GradePreset, ruler: RulerId): string {
  const demo = demoClass();
  const challenge = { ...demo.challenges[0]!, gradePreset, ruler, hidden: [] };
  const stood = demo.attempts.filter((one) => one.challenge === challenge.id && one.state.kind === 'stood');
  const groups = HEIGHTS_MM.map((_, k) => ({ id: `g${k}`, name: `Crew ${k + 1}`, measured: {} }));
  const attempts = HEIGHTS_MM.map((heightMm, k) => ({
    ...stood[k % stood.length]!,
    id: `try-${k}`,
    group: `g${k}`,
    decisions: [],
    observed: { heightReadingsMm: [heightMm], stoodSeconds: 30 },
  }));
  const day = { ...demo.day, weights: {} };
  return encode('class', { ...demo, groups, challenges: [challenge], attempts, supplies: {}, day });
}

const HEIGHTS_MM = [270, 296, 305, 305, 317, 325, 336, 341, 347, 349, 362, 379];
