// The kinds of piece that can be traced, and the pieces that are done, from the table up.

import { kindsOf } from '@cairnmark/engine';
import { Icon } from '../../parts/icon.tsx';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { pickedUp, putAway, takenOff, tapsAsked } from './hand.ts';
import { kindsLeft } from './kinds-left.ts';
import { shapeBegun, shapePutAway, shapeTakenOff } from './shape.ts';
import { ShapePicture } from './shape-picture.tsx';
import type { TraceShown } from './shown.ts';
import { useTraceWords } from './trace-words.ts';

export function KindRows({ tracing, step, words, bench, at, scale }: TraceShown) {
  const { say } = useTraceWords();
  const { hand } = tracing;
  const left = kindsLeft(tracing, bench);
  const sizes = kindsOf(at.challenge, at.group);
  const shape = tracing.shapeInHand;
  return (
    <ul className="trace-rows">
      {at.challenge.kit.kinds.map((kind) => {
        const solid = bench.solids.get(kind.id);
        const count = left.get(kind.id) ?? 0;
        const isPicked = hand?.kind === kind.id;
        // With a piece in hand its own row is left, so that what to do with it stands in sight; a tap puts it back.
        if (solid === undefined || shape !== null || (hand === null ? count === 0 : !isPicked)) return null;
        const usual = solid.restings[0]?.id ?? '';
        return (
          <li key={kind.id} className={isPicked ? 'picked' : undefined}>
            <button
              type="button"
              className="row"
              data-trace-kind={kind.id}
              aria-pressed={isPicked}
              onClick={() => step(isPicked ? putAway : pickedUp(kind.id, usual))}
            >
              <SolidPicture solid={solid} scale={scale} {...(isPicked ? { resting: hand.resting } : {})} />
              <span className="name">
                {kind.name} <small>{words.inClass.sizes(sizes.get(kind.id) ?? kind.solid)}</small>
              </span>
              <span className="mut">
                {isPicked
                  ? say('trace.taps', { done: hand.taps.length, most: tapsAsked(solid, hand.resting) })
                  : say('trace.left', { count })}
              </span>
            </button>
          </li>
        );
      })}
      {hand === null && (
        <li className={shape === null ? undefined : 'picked'}>
          <button
            type="button"
            className="row"
            aria-pressed={shape !== null}
            onClick={() => step(shape === null ? shapeBegun : shapePutAway)}
          >
            <ShapePicture />
            <span className="name">{say('trace.shape')}</span>
          </button>
        </li>
      )}
    </ul>
  );
}

export function DoneRows({ tracing, step, bench, at, scale }: TraceShown) {
  const { say } = useTraceWords();
  const [last, lastShape] = [tracing.pieces.length - 1, tracing.shapes.length - 1];
  if (last < 0 && lastShape < 0) return null;
  return (
    <section className="trace-step">
      <h2>{say('trace.done')}</h2>
      <ol className="trace-rows">
        {tracing.pieces.map(({ laid: { kind, resting } }, k) => {
          const solid = bench.solids.get(kind);
          const name = at.challenge.kit.kinds.find(({ id }) => id === kind)?.name ?? kind;
          return (
            <li key={k} className="row trace-done-row">
              {solid !== undefined && <SolidPicture solid={solid} resting={resting} scale={scale} />}
              <span className="name">
                {k + 1}. {name}
              </span>
              {k === last && lastShape < 0 && (
                <button type="button" className="btn sq" onClick={() => step(takenOff)}>
                  <Icon name="take-off" />
                  <span className="vh">{say('trace.take-off', { kind: name, number: k + 1 })}</span>
                </button>
              )}
            </li>
          );
        })}
        {tracing.shapes.map((_, k) => (
          <li key={`shape-${k}`} className="row trace-done-row">
            <ShapePicture />
            <span className="name">
              {say('trace.shape-name')} {k + 1}
            </span>
            {k === lastShape && (
              <button type="button" className="btn sq" onClick={() => step(shapeTakenOff)}>
                <Icon name="take-off" />
                <span className="vh">{say('trace.shape-off', { number: k + 1 })}</span>
              </button>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
