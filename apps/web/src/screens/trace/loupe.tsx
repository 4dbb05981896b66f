// The round magnifier: what is under the cross, two to three times as large as on the photo.

import type { Vec2 } from '@cairnmark/geometry';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** px across; on a telephone less. */
const WIDE_PX = 208;
const NARROW_PX = 120;
/** Times as large as the photo is shown. */
const TIMES = 2.5;
/** px of the page a pixel of the photo, at least: a tap is to be within two of them. */
const LEAST_SCALE = 2;

export function Loupe({
  source,
  at: [x, y],
  from: [left, top],
  isLeft,
  children,
}: {
  readonly source: HTMLCanvasElement;
  /** px of `source`. */
  readonly at: Vec2;
  /** Where `source` begins on the photo, px. */
  readonly from: Vec2;
  /** On which side of the photo it stands, away from the hand. */
  readonly isLeft: boolean;
  readonly children: ComponentChildren;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const shownWidth = source.clientWidth;
  const sizePx = shownWidth < 560 ? NARROW_PX : WIDE_PX;
  const fit = Math.min(shownWidth / source.width, source.clientHeight / source.height);
  const seen = sizePx / Math.max(TIMES * fit, LEAST_SCALE);
  useLayoutEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (context === null || context === undefined) return;
    context.clearRect(0, 0, sizePx, sizePx);
    context.drawImage(source, x - seen / 2, y - seen / 2, seen, seen, 0, 0, sizePx, sizePx);
  });
  return (
    <div className={`trace-loupe ${isLeft ? 'left' : 'right'}`} style={{ width: sizePx, height: sizePx }}>
      <canvas ref={canvas} width={sizePx} height={sizePx} />
      <svg
        viewBox={`${left + x - seen / 2} ${top + y - seen / 2} ${seen} ${seen}`}
        width={sizePx}
        height={sizePx}
        aria-hidden="true"
        focusable="false"
      >
        {children}
      </svg>
      <svg viewBox="0 0 100 100" width={sizePx} height={sizePx} aria-hidden="true" focusable="false">
        <path className="trace-cross" d="M38 50h9m6 0h9M50 38v9m0 6v9" />
      </svg>
    </div>
  );
}
