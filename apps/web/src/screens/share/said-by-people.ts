// What people have said of a try: whoever brings one in from elsewhere brings in no more than they may say here themselves.

import type { Attempt } from '@cairnmark/engine';
import type { Act } from '../../app/roles.ts';

/** What stands in a try that takes leave. */
export function saidOf({ confirmedBy, judged, answers, decisions, adjustments }: Attempt): readonly Act[] {
  return [
    ...(confirmedBy === null ? [] : ['confirm' as const]),
    ...(judged.length + Object.keys(answers).length === 0 ? [] : ['judge' as const]),
    ...(decisions.length + adjustments.length === 0 ? [] : ['decide' as const]),
  ];
}

/** The try as it comes in by the hands of somebody with leave for this and no more: it waits for the others again. */
export function asAllowed(attempt: Attempt, may: (act: Act) => boolean): Attempt {
  return {
    ...attempt,
    ...(may('confirm') ? {} : { confirmedBy: null }),
    ...(may('judge') ? {} : { judged: [], answers: {} }),
    ...(may('decide') ? {} : { decisions: [], adjustments: [], chosen: false }),
  };
}
