// A load that balances on a line leaves it square to the line, whichever way the line runs and however its ends round. mm.

import { describe, expect, it } from 'vitest';
import { FULL, judged, question } from '../../../../tests/reference/judged-builds.ts';
import { cone, cylinder, put } from '../../../../tests/reference/stacked-builds.ts';
import { tiltTowards } from './on-request.ts';

const SPECS = { cone: cone(20, 40), log: cylinder(15, 70) };
const TURNS = Array.from({ length: 21 }, (_, k) => 0.3 * k);

describe('a piece on a line of contact', () => {
  it.each(['cone', 'log'] as const)(
    '%s on its side: the side to which it is said to tip is one to which it does',
    (kind) => {
      for (const turnRad of TURNS) {
        const asked = question([put(kind, 7, -3, { resting: 'side', turnRad })], SPECS, FULL, 0.5);
        const { tipsAt } = judged(asked);
        const answer = tiltTowards(asked, tipsAt!.direction);
        // Along the line it bears 0.5, the friction; rounding of the direction leaves a trace of that.
        expect(answer.ok && answer.value !== null ? answer.value.push : Number.NaN, `turned ${turnRad}`).toBeLessThan(
          1e-9,
        );
      }
    },
  );
});
