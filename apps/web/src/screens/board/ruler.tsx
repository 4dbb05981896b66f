// The ruler over the bars, with its numbers and its divisions.

import type { Axis, Tick } from './axis.ts';
import { percentAt } from './axis.ts';

export function Ruler({
  axis,
  unit,
  number,
}: {
  readonly axis: Axis;
  readonly unit: string;
  readonly number: (value: number) => string;
}) {
  const path = axis.ticks.map(({ at, size }) => `M${10 * percentAt(at, axis)} 30v-${LENGTHS[size]}`).join('');
  return (
    <div className="rank-ruler" aria-hidden="true">
      <div className="rank-ruler-numbers">
        {axis.numbers.map((at) => (
          <span key={at} style={{ left: `${percentAt(at, axis)}%` }}>
            {number(at)}
          </span>
        ))}
      </div>
      <div className="rank-ruler-wood">
        <svg viewBox="0 0 1000 30" preserveAspectRatio="none" aria-hidden="true">
          <path d={path} />
        </svg>
        <span>{unit}</span>
      </div>
    </div>
  );
}

/** Of a ruler 30 high. */
const LENGTHS: Readonly<Record<Tick['size'], number>> = { long: 16, middle: 11, short: 7 };
