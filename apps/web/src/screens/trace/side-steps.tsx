// The photo from the side: which piece is highest, where its top is, and how high that is beside what the pieces add up to.

import { tapsFor } from '@cairnmark/photo';
import type { ComponentChildren } from 'preact';
import { Icon } from '../../parts/icon.tsx';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { decimals } from './decimals.ts';
import { camerasOf, heightOf, highestOf } from './heights.ts';
import { ShapePicture } from './shape-picture.tsx';
import type { TraceShown } from './shown.ts';
import { Told } from './told.tsx';
import { useTraceWords } from './trace-words.ts';
import { highestIs, topNudged, withoutTop } from './tracing.ts';

export function SideSteps(props: TraceShown & { readonly use: (heightMm: number | null) => void }) {
  const { tracing, step, words, bench, at, scale, side, stood } = props;
  const trace = useTraceWords();
  const { say } = trace;
  const highest = highestOf(stood, tracing.shapes, tracing.highest);
  const [first] = highest;
  if (first === undefined) return <Told lines={[say('trace.needs-pieces')]} />;
  const withoutHeight = (
    <button type="button" className="btn" onClick={() => props.use(null)}>
      {say('trace.use-build')}
    </button>
  );
  // No photo of the side, or none to measure by: what was traced from above is not lost for that.
  if (side === null) return withoutHeight;
  const { taps } = tracing.top;
  const asked = tapsFor(first.shape);
  const found = taps.length === asked ? heightOf(camerasOf(side), highest, tracing.top) : null;
  const meant = found?.ok ? found.value.highest : first;
  const name = (kind: string): string => at.challenge.kit.kinds.find(({ id }) => id === kind)?.name ?? kind;
  const row = (number: number, what: ComponentChildren, topMm: number) => (
    <li key={number} className={number === meant.number ? 'picked' : undefined}>
      <button
        type="button"
        className="row"
        aria-pressed={number === meant.number}
        onClick={() => step(highestIs(number))}
      >
        {what}
        <span className="mut">{words.inClass.amount('height', topMm, 0)}</span>
      </button>
    </li>
  );
  return (
    <>
      <section className="trace-step">
        <h2>{say('trace.highest')}</h2>
        <ul className="trace-rows">
          {stood
            .filter(({ piece }) => !stood.some(({ holders }) => holders.includes(piece.index)))
            .map(({ piece, laid }) => {
              const solid = bench.solids.get(piece.kind);
              return row(
                piece.index,
                <>
                  {solid !== undefined && <SolidPicture solid={solid} resting={laid.resting} scale={scale} />}
                  <span className="name">
                    {piece.index + 1}. {name(piece.kind)}
                  </span>
                </>,
                piece.topMm,
              );
            })}
          {tracing.shapes.map(({ planeMm }, k) =>
            row(
              stood.length + k,
              <>
                <ShapePicture />
                <span className="name">
                  {say('trace.shape-name')} {k + 1}
                </span>
              </>,
              planeMm,
            ),
          )}
        </ul>
      </section>
      <section className="trace-step">
        {found?.ok ? (
          <>
            <h2>{say('trace.top-fits')}</h2>
            <p className="mut">{say('trace.nudge')}</p>
          </>
        ) : (
          <>
            <h2>{say(asked === 1 ? 'trace.top' : 'trace.top-ends')}</h2>
            <p className="mut">{say('trace.top-how')}</p>
          </>
        )}
        {found !== null && !found.ok && found.issues[0] !== undefined && (
          <Told lines={trace.issue(found.issues[0], decimals(words))} />
        )}
        <div className="row-of">
          {found?.ok &&
            (['up', 'down'] as const).map((way) => (
              <button
                key={way}
                type="button"
                className="btn sq"
                onClick={() => step(topNudged(way === 'up' ? NUDGE_MM : -NUDGE_MM))}
              >
                <Icon name={way} />
                <span className="vh">{say(`trace.${way}`)}</span>
              </button>
            ))}
          {taps.length > 0 && (
            <button type="button" className="btn" onClick={() => step(withoutTop)}>
              {say('trace.tap-again')}
            </button>
          )}
        </div>
      </section>
      {found?.ok && (
        <Height {...props} heightMm={found.value.heightMm} sigmaMm={found.value.sigmaMm} stackedMm={meant.stackedMm} />
      )}
      {found?.ok !== true && withoutHeight}
    </>
  );
}

const NUDGE_MM = 1;
/** A standard deviation is doubled to cover about 95 % (JCGM 100:2008, 6.2; from memory). */
const COVERAGE = 2;
/** mm. What the promise of a photo is with the magnifier; no smaller error is told. */
const PROMISED_MM = 3;

function Height({
  heightMm,
  sigmaMm,
  stackedMm,
  words,
  use,
}: TraceShown & {
  readonly use: (heightMm: number | null) => void;
  readonly heightMm: number;
  readonly sigmaMm: number;
  readonly stackedMm: number;
}) {
  const { say } = useTraceWords();
  const errorMm = Math.max(PROMISED_MM, COVERAGE * sigmaMm);
  const amount = (mm: number): string => words.inClass.amount('height', mm, errorMm);
  const offMm = heightMm - stackedMm;
  const isSame = Math.abs(offMm) <= errorMm;
  const told = { stacked: amount(stackedMm), off: amount(Math.abs(offMm)) };
  return (
    <section className="trace-step">
      <p className="trace-height" role="status">
        <span className="mut">{say('trace.height')}</span> <b>{amount(heightMm)}</b>{' '}
        <small>{words.inClass.error('height', errorMm)}</small>
      </p>
      <p>{isSame ? say('trace.same', told) : say(offMm > 0 ? 'trace.higher' : 'trace.lower', told)}</p>
      {Math.abs(offMm) > MUCH * errorMm && <p className="warnbox">{say('trace.unlike')}</p>}
      <button type="button" className="btn main" onClick={() => use(heightMm)}>
        {say('trace.use-height')}
      </button>
    </section>
  );
}

/** Errors by which the two heights may differ before something else must be wrong. */
const MUCH = 2;
