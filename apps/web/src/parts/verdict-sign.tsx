// A verdict drawn as physics: a plumb line over a bar, in its middle, near its end, or past it.

import type { Stability } from '@cairnmark/geometry';
import './verdict-sign.css';

type Verdict = Stability['verdict'];

/** Where the line hangs over a bar from 9 to 35, in the drawing's own units; null: nothing is known of it. */
const PLUMB: Readonly<Record<Verdict, number | null>> = {
  steady: 22,
  wobbly: 31,
  'too-close-to-call': 35,
  falls: 41,
  'rolls-at-a-touch': 41,
  'not-predicted': null,
  'needs-solver': 22,
  'not-decided': null,
};

export function VerdictSign({ verdict }: { readonly verdict: Verdict }) {
  const x = PLUMB[verdict];
  return (
    <svg className="verdict-sign" viewBox="0 0 48 44" aria-hidden="true">
      <path d="M9 38h26" stroke="currentColor" strokeWidth="4" />
      {x === null ? null : (
        <>
          <path d={`M${x} 4v22`} stroke="currentColor" strokeWidth="2" strokeDasharray="4 3" />
          <path d={`M${x - 5} 25h10l-5 9Z`} fill="currentColor" />
        </>
      )}
    </svg>
  );
}
