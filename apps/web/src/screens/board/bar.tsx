// A bar on the ruler, with its measuring error as a whisker. A drawing: the numbers stand beside it as text.

import type { Axis } from './axis.ts';
import { percentAt } from './axis.ts';
import type { Bar } from './bars.ts';
import { hasError } from './bars.ts';
import type { Fills } from './legend.tsx';

export function BarDrawing({ bar, axis, fills }: { readonly bar: Bar; readonly axis: Axis; readonly fills: Fills }) {
  const { segments, takenOff, value, error } = bar;
  const stretch = (from: number, to: number) => ({
    left: `${percentAt(from, axis)}%`,
    width: `${percentAt(to, axis) - percentAt(from, axis)}%`,
  });
  return (
    <div className="rank-drawn" aria-hidden="true">
      {segments.map(({ part, from, to }) => (
        <i key={part} className={`rank-piece rank-fill-${fills.get(part) ?? 0}`} style={stretch(from, to)} />
      ))}
      {takenOff !== null && <i className="rank-piece rank-fill-off" style={stretch(takenOff.from, takenOff.to)} />}
      {axis.from < 0 && <b className="rank-zero" style={{ left: `${percentAt(0, axis)}%` }} />}
      {hasError(error) && (
        <b className="rank-whisker" style={stretch(Math.max(axis.from, value - error.below), value + error.above)} />
      )}
    </div>
  );
}
