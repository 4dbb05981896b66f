// The sign of a verdict: a plumb line over a bar, in its middle, near its end, or past it. A cross for a broken rule.

import type { BuildState } from './build-state.ts';

export function VerdictSign({ state }: { readonly state: BuildState }) {
  if (state.is === 'rule-broken' || state.is === 'refused') {
    return (
      <svg className="sign" viewBox="0 0 32 40" aria-hidden="true">
        <path d="M5 9l22 22M27 9L5 31" className="stroke" />
      </svg>
    );
  }
  if (state.is !== 'judged') return <span className="sign" />;
  const x = PLUMB[state.stability.verdict];
  if (x === undefined) return <span className="sign" />;
  return (
    <svg className="sign" viewBox="0 0 32 40" aria-hidden="true">
      <path d="M4 36h18" className="stroke bar" />
      <path d={`M${x} 4v20`} className="stroke plumb" />
      <path d={`M${x - 4} 23h8l-4 8z`} className="bob" />
    </svg>
  );
}

/** Where the line hangs over a bar from 4 to 22. */
const PLUMB: Readonly<Partial<Record<string, number>>> = {
  steady: 13,
  wobbly: 19,
  'too-close-to-call': 22,
  falls: 28,
  'rolls-at-a-touch': 28,
};
