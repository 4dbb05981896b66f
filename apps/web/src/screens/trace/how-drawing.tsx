// How the camera is held, as a drawing: the sheet and a tower from the side, with the line of sight.

import type { View } from './tracing.ts';

/** rad over the table: 20 degrees off straight down, and 15 degrees up. */
const UP: Readonly<Record<View, number>> = { above: (70 * Math.PI) / 180, side: (15 * Math.PI) / 180 };
const AWAY = 300;
const FAR = 460;
const [MIDDLE_X, TABLE_Y] = [330, 400];

export function HowDrawing({ view }: { readonly view: View }) {
  const up = UP[view];
  const [dx, dy] = [-Math.cos(up), -Math.sin(up)];
  const [x, y] = [MIDDLE_X + AWAY * dx, TABLE_Y - 50 + AWAY * dy];
  const degrees = (up * 180) / Math.PI;
  const spread = [-0.32, 0.32].map((turn) => {
    const [c, s] = [Math.cos(up + turn), Math.sin(up + turn)];
    // To the table, or as far as the drawing goes.
    const far = s > 0 ? Math.min(FAR, (TABLE_Y - y) / s) : FAR;
    return `M${x} ${y}l${far * c} ${far * s}`;
  });
  return (
    <svg className="trace-how-drawing" viewBox="0 0 560 440" aria-hidden="true" focusable="false">
      <path className="trace-sight" d={spread.join('')} />
      <path className="trace-table" d={`M40 ${TABLE_Y}H540`} />
      <path className="trace-sheet" d={`M${MIDDLE_X - 150} ${TABLE_Y - 4}h300v4h-300z`} />
      <path
        className="trace-ink"
        d={[-136, -16, 104].map((at) => `M${MIDDLE_X + at} ${TABLE_Y - 6}h32v2h-32z`).join('')}
      />
      <path
        className="trace-tower"
        d={`M${MIDDLE_X - 28} ${TABLE_Y - 4}v-52h56v52zm8-52v-44h40v44zm4-44l16-44l16 44z`}
      />
      <g transform={`translate(${x} ${y}) rotate(${degrees})`}>
        <path className="trace-camera" d="M-34-24h40v10h10v28h-10v10h-40z" />
      </g>
    </svg>
  );
}
