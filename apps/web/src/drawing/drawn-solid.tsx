// A drawing of a solid as SVG: flat tones on flat faces, a blend on what is curved, a dark line round each.

import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { ringPath, rounded } from './paths.ts';
import type { Blend, SolidDrawing } from './solid-drawing.ts';
import { mixed } from './tone.ts';

interface Drawn {
  readonly drawing: SolidDrawing;
  /** The custom property that holds the colour. */
  readonly token: string;
  /** Drawing units a mm. */
  readonly scale: number;
  /** An id of its own in the page, for a drawing that stands in no tree of parts; else it finds one. */
  readonly name?: string | undefined;
}

export function DrawnSolid({ drawing, token, scale, name }: Drawn) {
  const own = useId();
  const id = name ?? own;
  const { outline, faces, blend } = drawing;
  const fill = blend === null ? mixed(token, 0) : `url(#${id})`;
  return (
    <>
      {blend !== null && <BlendFill id={id} blend={blend} token={token} scale={scale} />}
      <path className="solid-line" d={ringPath(outline, scale)} style={{ fill }} />
      {faces.map(({ ring, tone }) => {
        const d = ringPath(ring, scale);
        return <path key={d} className="solid-line" d={d} style={{ fill: mixed(token, tone) }} />;
      })}
    </>
  );
}

interface BlendFillOf extends Omit<Drawn, 'drawing' | 'name'> {
  readonly id: string;
  readonly blend: Blend;
}

function BlendFill({ id, blend, token, scale }: BlendFillOf): ComponentChildren {
  const stops = blend.stops.map(({ at, tone }) => (
    <stop key={at} offset={at} style={{ stopColor: mixed(token, tone) }} />
  ));
  if (blend.kind === 'round') {
    const [cx, cy] = blend.centre;
    return (
      <radialGradient
        id={id}
        gradientUnits="userSpaceOnUse"
        cx={rounded(cx * scale)}
        cy={rounded(cy * scale)}
        r={rounded(blend.radiusMm * scale)}
      >
        {stops}
      </radialGradient>
    );
  }
  const [[x1, y1], [x2, y2]] = [blend.from, blend.to];
  return (
    <linearGradient
      id={id}
      gradientUnits="userSpaceOnUse"
      x1={rounded(x1 * scale)}
      y1={rounded(y1 * scale)}
      x2={rounded(x2 * scale)}
      y2={rounded(y2 * scale)}
    >
      {stops}
    </linearGradient>
  );
}
