// Whether groups have built under a challenge. From then on its rules and its kit stay: old results never change under a
// new rule, so whoever wants another rule changes a copy.

import type { ClassRecord } from '@cairnmark/engine';

export const isPlayed = ({ attempts }: ClassRecord, challenge: string): boolean =>
  attempts.some((attempt) => attempt.challenge === challenge);
