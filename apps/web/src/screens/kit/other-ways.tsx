// The other ways to measure a piece, each with what it shows now. Along a slope stands which slope it is, drawn, and the true
// height that follows.

import type { KindOfPiece } from '@cairnmark/engine';
import type { Sizes, SizeWay, Solid } from '@cairnmark/geometry';
import { LARGEST_SIZE_MM, makeSolid, SMALLEST_SIZE_MM } from '@cairnmark/geometry';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { LengthField } from '../../parts/length-field.tsx';
import { Refused } from './refused.tsx';
import { slopeLine } from './slope-line.ts';
import { SlopePicture } from './slope-picture.tsx';
import { tenths } from './texts.ts';
import { useKit } from './use-kit.ts';
import { measuredBy, shownBy, waysOf } from './ways.ts';

export function OtherWays({
  kind,
  solid,
  put,
  atSlope,
}: {
  readonly kind: KindOfPiece;
  readonly solid: Solid;
  readonly put: (sizes: Sizes) => readonly string[];
  readonly atSlope: boolean;
}) {
  const { say, told } = useKit();
  const [refused, setRefused] = useState<readonly string[]>([]);
  const part = useRef<HTMLElement>(null);
  const others = waysOf(kind.solid).filter(({ name }) => kind.solid.sizes[name] === undefined);
  const slopes = others.filter((way) => way.kind === 'slope');
  const ways = [...slopes, ...others.filter((way) => way.kind !== 'slope')];
  useLayoutEffect(() => {
    if (atSlope) part.current?.querySelector<HTMLInputElement>('.kit-way-slope input')?.focus();
  }, [atSlope]);
  const measure = (way: SizeWay, valueMm: number): void => {
    const sizes = measuredBy(kind.solid, way, valueMm);
    const made = makeSolid({ ...kind.solid, sizes });
    setRefused(made.ok ? put(sizes) : told(made.issues));
  };
  return (
    <section ref={part} className="kit-part" aria-label={say('kit.ways')}>
      <h2>{say('kit.ways')}</h2>
      <p className="mut">{say(slopes.length > 0 ? 'kit.slope-what' : 'kit.ways-what')}</p>
      <ul className="kit-ways">
        {ways.map((way) => (
          <OneWay key={way.name} way={way} solid={solid} measure={(valueMm) => measure(way, valueMm)} />
        ))}
      </ul>
      <Refused sentences={refused} />
    </section>
  );
}

function OneWay({
  way,
  solid,
  measure,
}: {
  readonly way: SizeWay;
  readonly solid: Solid;
  readonly measure: (valueMm: number) => void;
}) {
  const { say, inClass, ruler } = useKit();
  const shownMm = tenths(shownBy(way, solid.sizes), ruler.unit);
  const length = (valueMm: number): string => inClass.exact(tenths(valueMm, ruler.unit), 'mm');
  const round = solid.sizes['radius'] !== undefined;
  const label = say(way.name === 'slant' && round ? 'way.slant-round' : `way.${way.name}`);
  return (
    <li className={`kit-way kit-way-${way.kind}`}>
      {way.kind === 'slope' && <SlopePicture solid={solid} line={slopeLine(way.name, solid.sizes, way.runMm)} />}
      <div>
        <LengthField
          label={label}
          valueMm={shownMm}
          ruler={ruler}
          leastMm={way.kind === 'slope' ? leastSlopeMm(way.runMm) : SMALLEST_SIZE_MM}
          mostMm={way.kind === 'slope' ? LARGEST_SIZE_MM : LARGEST_SIZE_MM / way.times}
          change={measure}
        />
        {way.kind === 'slope' && (
          <>
            <p>
              <b>
                {say('kit.slope-means', {
                  slope: length(shownMm),
                  height: length(solid.sizes['height'] ?? Number.NaN),
                })}
              </b>
            </p>
            <p className="mut">{say('kit.slope-least', { run: length(way.runMm) })}</p>
          </>
        )}
      </div>
    </li>
  );
}

/** The first tenth of a mm past the run: a slope as long as that would lie flat. */
const leastSlopeMm = (runMm: number): number => (Math.floor(runMm * 10 + ON_A_TENTH) + 1) / 10;
/** No unit: what a run on a tenth may be short of it by rounding. */
const ON_A_TENTH = 1e-6;
