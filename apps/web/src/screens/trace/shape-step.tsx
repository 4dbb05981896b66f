// A shape that is not on the list: its height, its corners, whether the line fits, which piece it is.

import { useId } from 'preact/hooks';
import { Choice } from '../../parts/choice.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { decimals } from './decimals.ts';
import { kindsLeft } from './kinds-left.ts';
import { canClose, shapeClosed, shapeKept, shapeSaid, withoutCorners } from './shape.ts';
import type { TraceShown } from './shown.ts';
import { Told } from './told.tsx';
import { useTraceWords } from './trace-words.ts';

export function ShapeStep(props: TraceShown) {
  const { tracing, step, fitting, words, above } = props;
  const trace = useTraceWords();
  const { say } = trace;
  const shape = tracing.shapeInHand;
  if (shape === null || above === null) return null;
  const { taps, planeMm, found } = shape;
  return (
    <section className="trace-step trace-hand-step" aria-busy={fitting}>
      {taps.length === 0 && <p className="mut">{say('trace.shape-last')}</p>}
      <LengthField
        label={say('trace.shape-plane')}
        valueMm={planeMm}
        ruler={words.ruler}
        change={(mm) => step(shapeSaid({ planeMm: mm }))}
        clear={() => step(shapeSaid({ planeMm: null }))}
      />
      {found === null && <h2>{say('trace.shape-how')}</h2>}
      {found === null && <p className="mut trace-keys">{say('trace.keys')}</p>}
      {found === null && (
        <p role="status">
          {taps.length === 1 ? say('trace.corner-one') : say('trace.corners', { count: taps.length })}
          {taps.length >= 3 && planeMm === null ? `. ${say('trace.close-first')}` : ''}
        </p>
      )}
      {shape.issue !== null && <Told lines={trace.issue(shape.issue, decimals(words))} />}
      {found !== null && (
        <div role="status">
          <h2>{say('trace.fits')}</h2>
          <p>
            {say('trace.shape-found', {
              area: words.inClass.amount('footprint-area', found.areaMm2, COVERAGE * found.areaSigmaMm2),
              perimeter: words.inClass.amount(
                'footprint-perimeter',
                found.perimeterMm,
                COVERAGE * found.perimeterSigmaMm,
              ),
            })}
          </p>
        </div>
      )}
      {found !== null && <AboutShape {...props} />}
      <div className="row-of">
        {taps.length > 0 && (
          <button type="button" className="btn" onClick={() => step(withoutCorners)}>
            {say('trace.tap-again')}
          </button>
        )}
        {canClose(shape) && (
          <button type="button" className="btn main" onClick={() => step(shapeClosed)}>
            {say('trace.close')}
          </button>
        )}
        {found !== null && (
          <button type="button" className="btn main" onClick={() => step(shapeKept)}>
            {say('trace.it-fits')}
          </button>
        )}
      </div>
    </section>
  );
}

/** A standard deviation is doubled to cover about 95 % (JCGM 100:2008, 6.2; from memory). */
const COVERAGE = 2;

function AboutShape({ tracing, step, bench, at }: TraceShown) {
  const { say } = useTraceWords();
  const id = useId();
  const shape = tracing.shapeInHand;
  if (shape === null) return null;
  const left = kindsLeft(tracing, bench);
  const kinds = at.challenge.kit.kinds.filter(({ id }) => (left.get(id) ?? 0) > 0);
  return (
    <>
      <Choice
        label={say('trace.shape-on-table')}
        options={[
          { id: 'yes', text: say('trace.yes') },
          { id: 'no', text: say('trace.no') },
        ]}
        chosen={shape.onTable ? 'yes' : 'no'}
        choose={(answer) => step(shapeSaid({ onTable: answer === 'yes' }))}
      />
      <div className="field">
        <label htmlFor={id}>{say('trace.shape-kind')}</label>
        <select
          id={id}
          className="in"
          value={shape.kind ?? NONE}
          onChange={({ currentTarget: { value } }) => step(shapeSaid({ kind: value === NONE ? null : value }))}
        >
          <option value={NONE}>{say('trace.shape-none')}</option>
          {kinds.map((kind) => (
            <option key={kind.id} value={kind.id}>
              {kind.name}
            </option>
          ))}
        </select>
      </div>
      <p className="mut">{say('trace.shape-report')}</p>
    </>
  );
}

/** No kind has this id: those of kits are words. */
const NONE = '';
