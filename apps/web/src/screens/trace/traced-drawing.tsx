// Traced outlines seen from above, on squared paper: a square is a centimetre or an inch.

import type { Outline, TracedOutline, Vec2 } from '@cairnmark/geometry';
import type { RulerUnit } from '../../drawing/ruler-marks.ts';
import { SQUARES } from '../../drawing/sheet.ts';
import { useTraceWords } from './trace-words.ts';

export function TracedDrawing({
  outlines,
  unit,
}: {
  readonly outlines: readonly TracedOutline[];
  readonly unit: RulerUnit;
}) {
  const { say } = useTraceWords();
  const { squareMm } = SQUARES[unit];
  const down = (mm: number): number => squareMm * Math.floor(mm / squareMm);
  const reach = outlines.flatMap(({ outline }) => reachOf(outline));
  const [left, right] = [Math.min(...reach.map(([x]) => x)), Math.max(...reach.map(([x]) => x))];
  const [low, high] = [Math.min(...reach.map(([, y]) => y)), Math.max(...reach.map(([, y]) => y))];
  const [x, y] = [down(left) - squareMm, down(-high) - squareMm];
  const [width, height] = [right - x + 2 * squareMm, -low - y + 2 * squareMm];
  return (
    <figure className="trace-drawn">
      <svg viewBox={`${x} ${y} ${width} ${height}`} role="img" aria-label={say('trace.drawn')}>
        <path className="trace-squares" d={squares([x, y], [width, height], squareMm)} />
        {outlines.map(({ outline }, k) => (
          <path key={k} className="trace-drawn-outline" d={pathOf(outline)} />
        ))}
      </svg>
      <figcaption>
        {say('trace.drawn')} <a href="#/score">{say('trace.to-score')}</a>
      </figcaption>
    </figure>
  );
}

function reachOf(outline: Outline): readonly Vec2[] {
  if (outline.kind === 'polygon') return outline.points;
  const {
    centre: [x, y],
    radiusMm: r,
  } = outline;
  return [
    [x - r, y - r],
    [x + r, y + r],
  ];
}

function squares([x, y]: Vec2, [width, height]: Vec2, squareMm: number): string {
  const lines = (length: number): readonly number[] =>
    Array.from({ length: Math.floor(length / squareMm) + 1 }, (_, k) => k * squareMm);
  const across = lines(width).map((away) => `M${x + away} ${y}v${height}`);
  const along = lines(height).map((away) => `M${x} ${y + away}h${width}`);
  return [...across, ...along].join('');
}

/** y goes up on the table and down on the page. */
function pathOf(outline: Outline): string {
  if (outline.kind === 'polygon') return `M${outline.points.map(([x, y]) => `${x} ${-y}`).join('L')}Z`;
  const {
    centre: [x, y],
    radiusMm: r,
  } = outline;
  return `M${x - r} ${-y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}
