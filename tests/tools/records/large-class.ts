// The class of an event day: 24 groups and 5 challenges, every group with a try at each, made of the builds of the demo.

import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';

export const EVENT_GROUPS = 24;
export const EVENT_CHALLENGES = 5;

export function largeClass(): ClassRecord {
  const demo = demoClass();
  const challenges = Array.from({ length: EVENT_CHALLENGES }, (_, k) => ({
    ...demo.challenges[k % demo.challenges.length]!,
    id: `challenge-${k}`,
    name: `Challenge ${k + 1}`,
  }));
  const groups = Array.from({ length: EVENT_GROUPS }, (_, k) => ({
    id: `group-${k}`,
    name: `Crew ${k + 1}`,
    measured: {},
  }));
  const built = demo.attempts.filter(({ layout }) => layout.pieces.length > 0);
  const attempts = groups.flatMap((group, i) =>
    challenges.map((challenge, k) => {
      const of = demo.challenges[k % demo.challenges.length]!.id;
      const same = built.filter((attempt) => attempt.challenge === of);
      return { ...same[i % same.length]!, id: `try-${i}-${k}`, group: group.id, challenge: challenge.id };
    }),
  );
  const placePoints = groups.map((_, k) => EVENT_GROUPS - k);
  return { ...demo, groups, challenges, attempts, supplies: {}, day: { ...demo.day, placePoints, weights: {} } };
}
