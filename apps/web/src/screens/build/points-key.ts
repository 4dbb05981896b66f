// What stands beside the points on Build: whether they are earned by what is drawn, or by what was measured on the real
// build. Then they may differ from the numbers of the drawing, as 37 points for a tower that is drawn 38.0 cm high.

import type { Challenge, Report } from '@cairnmark/engine';

export function pointsKey(
  { stability, facts }: Pick<Report, 'stability' | 'facts'>,
  { points }: Pick<Challenge, 'points'>,
): 'read.points-real' | 'read.points-if' | 'read.points-now' {
  const earning = facts.filter(({ id }) => points.some(({ measure }) => measure === id));
  if (earning.some(({ source }) => source === 'observed' || source === 'decided')) return 'read.points-real';
  // A touch is enough: nobody can count on these points either.
  if (stability?.stands === false || stability?.verdict === 'rolls-at-a-touch') return 'read.points-if';
  return 'read.points-now';
}
