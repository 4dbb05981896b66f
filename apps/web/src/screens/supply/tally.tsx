// A count drawn as tally strokes. The number stands beside it.

import { GATE_HIGH, GATE_WIDE, gatePath, gatesOf } from './tally-strokes.ts';

export const Tally = ({ count }: { readonly count: number }) => (
  <span className="supply-tally" aria-hidden="true">
    {gatesOf(count).map((strokes, k) => (
      <svg
        key={`${k} ${strokes}`}
        width={GATE_WIDE}
        height={GATE_HIGH}
        viewBox={`0 0 ${GATE_WIDE} ${GATE_HIGH}`}
        aria-hidden="true"
        focusable="false"
      >
        <path d={gatePath(strokes)} />
      </svg>
    ))}
  </span>
);
