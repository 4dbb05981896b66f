// What a build that fell counts, as its challenge says. Rules [A2], [A11] and [A12] of the rules of scoring.

import type { Report } from '../report-types.ts';
import type { AttemptState, Challenge } from '../types.ts';

/** Of a build that was not there, or fell and is out or counts stated points, no part earns or loses anything. */
export const countsItsOwn = ({ state }: Report, { fallen }: Challenge): boolean =>
  state.kind === 'stood' || (fell(state) && fallen.counts === 'as-measured');

/** What stands in place of all that a build that fell earned; 0 where nothing does. */
export const statedPoints = ({ state }: Report, { fallen }: Challenge): number =>
  fell(state) && fallen.counts === 'points' ? fallen.points : 0;

const fell = ({ kind }: AttemptState): boolean => kind === 'fell' || kind === 'fell-before-measuring';
