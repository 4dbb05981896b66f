// A photo with what is drawn over it. It is tapped by a finger, by the mouse, or by keys that move a cross; a magnifier shows
// what is under the cross.

import type { Vec2 } from '@cairnmark/geometry';
import type { Photo } from '@cairnmark/photo';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Loupe } from './loupe.tsx';
import type { Region } from './region.ts';
import { moveBy, onPhoto } from './taps.ts';

export function PhotoView({
  photo,
  region,
  label,
  canTap,
  tap,
  tapBack,
  children,
}: {
  readonly photo: Photo;
  /** The part of it that is shown. */
  readonly region: Region;
  readonly label: string;
  /** Whether a tap means anything now. */
  readonly canTap: boolean;
  /** px of the photo. */
  readonly tap: (at: Vec2) => void;
  readonly tapBack: () => void;
  /** Drawn over the photo in its pixels, and again in the magnifier. */
  readonly children: ComponentChildren;
}) {
  const { x: left, y: top, width, height } = region;
  const canvas = useRef<HTMLCanvasElement>(null);
  const overlay = useRef<SVGSVGElement>(null);
  const [cross, setCross] = useState<Vec2 | null>(null);
  useLayoutEffect(() => {
    const image = new ImageData(new Uint8ClampedArray(photo.data), photo.width, photo.height);
    canvas.current?.getContext('2d')?.putImageData(image, -left, -top);
  }, [photo, left, top, width, height]);
  const middle: Vec2 = [left + width / 2, top + height / 2];
  const pointed = (event: PointerEvent): Vec2 | null =>
    overlay.current === null ? null : onPhoto(overlay.current, [event.clientX, event.clientY], region);
  const keys = (event: KeyboardEvent): void => {
    if (!canTap || event.ctrlKey || event.metaKey || event.altKey) return;
    const from: Vec2 = cross ?? middle;
    const moved = moveBy(from, event.key, event.shiftKey, region);
    if (moved !== null) setCross(moved);
    else if (event.key === 'Enter' || event.key === ' ') tap(from);
    else if (event.key === 'Backspace' || event.key === 'Delete') tapBack();
    else return;
    event.preventDefault();
  };
  return (
    <div
      className="trace-photo"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: keys move the cross while the photo has the focus
      tabIndex={0}
      role="application"
      aria-label={label}
      data-taps={canTap}
      onKeyDown={keys}
      // By keys alone: a finger or the mouse has its own place, and a magnifier in the middle would be in the way.
      onFocus={({ currentTarget }) =>
        canTap && cross === null && currentTarget.matches(':focus-visible') && setCross(middle)
      }
      onPointerMove={(event) => canTap && setCross(pointed(event))}
      onPointerDown={(event) => {
        if (!canTap || event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        setCross(pointed(event));
      }}
      onPointerUp={(event) => {
        const at = pointed(event);
        // What was pressed elsewhere and let go here is no tap.
        const isBegun = event.currentTarget.hasPointerCapture(event.pointerId);
        if (canTap && isBegun && event.button === 0 && at !== null) tap(at);
        if (event.pointerType !== 'mouse') setCross(null);
      }}
      onPointerCancel={() => setCross(null)}
      onPointerLeave={(event) => event.pointerType === 'mouse' && setCross(null)}
    >
      <canvas ref={canvas} width={width} height={height} />
      <svg ref={overlay} viewBox={`${left} ${top} ${width} ${height}`} aria-hidden="true" focusable="false">
        {children}
        {canTap && cross !== null && <Cross at={cross} arm={width / 60} />}
      </svg>
      {canTap && cross !== null && canvas.current !== null && (
        <Loupe
          source={canvas.current}
          at={[cross[0] - left, cross[1] - top]}
          from={[left, top]}
          isLeft={cross[0] > middle[0]}
        >
          {children}
        </Loupe>
      )}
    </div>
  );
}

/** `arm`: how far each of its arms reaches, px of the photo. */
const Cross = ({ at: [x, y], arm }: { readonly at: Vec2; readonly arm: number }) => (
  <path
    className="trace-cross"
    d={`M${x - arm} ${y}h${0.7 * arm}m${0.6 * arm} 0h${0.7 * arm}M${x} ${y - arm}v${0.7 * arm}m0 ${0.6 * arm}v${0.7 * arm}`}
  />
);
