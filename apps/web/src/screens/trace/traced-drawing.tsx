// Traced outlines seen from above, on squared paper: a square is a centimetre.

import type { Outline, TracedOutline, Vec2 } from '@cairnmark/geometry';
import { useTraceWords } from './trace-words.ts';

export function TracedDrawing({ outlines }: { readonly outlines: readonly TracedOutline[] }) {
  const { say } = useTraceWords();
  const reach = outlines.flatMap(({ outline }) => reachOf(outline));
  const [left, right] = [Math.min(...reach.map(([x]) => x)), Math.max(...reach.map(([x]) => x))];
  const [low, high] = [Math.min(...reach.map(([, y]) => y)), Math.max(...reach.map(([, y]) => y))];
  const [x, y] = [down(left) - SQUARE_MM, down(-high) - SQUARE_MM];
  const [width, height] = [right - x + 2 * SQUARE_MM, -low - y + 2 * SQUARE_MM];
  return (
    <figure className="trace-drawn">
      <svg viewBox={`${x} ${y} ${width} ${height}`} role="img" aria-label={say('trace.drawn')}>
        <path className="trace-squares" d={squares(x, y, width, height)} />
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

const SQUARE_MM = 10;

const down = (mm: number): number => SQUARE_MM * Math.floor(mm / SQUARE_MM);

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

function squares(x: number, y: number, width: number, height: number): string {
  const across = Array.from(
    { length: Math.floor(width / SQUARE_MM) + 1 },
    (_, k) => `M${x + k * SQUARE_MM} ${y}v${height}`,
  );
  const along = Array.from(
    { length: Math.floor(height / SQUARE_MM) + 1 },
    (_, k) => `M${x} ${y + k * SQUARE_MM}h${width}`,
  );
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
