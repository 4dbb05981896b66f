// The kinds of piece that can be traced, and the pieces that are done, from the table up.

import { stockLeft } from '@cairnmark/editing';
import { kindsOf } from '@cairnmark/engine';
import { Icon } from '../../parts/icon.tsx';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import type { TraceShown } from './shown.ts';
import { useTraceWords } from './trace-words.ts';
import { pickedUp, putAway, takenOff, tapsAsked } from './tracing.ts';

export function KindRows({ tracing, step, words, bench, at, scale }: TraceShown) {
  const { say } = useTraceWords();
  const { hand, pieces } = tracing;
  const left = stockLeft(
    pieces.map(({ laid }) => laid),
    bench,
  );
  const sizes = kindsOf(at.challenge, at.group);
  return (
    <ul className="trace-rows">
      {at.challenge.kit.kinds.map((kind) => {
        const solid = bench.solids.get(kind.id);
        const count = Math.max(0, left.get(kind.id) ?? 0);
        const isPicked = hand?.kind === kind.id;
        // With a piece in hand its own row is left, so that what to do with it stands in sight; a tap puts it back.
        if (solid === undefined || (hand === null ? count === 0 : !isPicked)) return null;
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
    </ul>
  );
}

export function DoneRows({ tracing, step, bench, at, scale }: TraceShown) {
  const { say } = useTraceWords();
  const last = tracing.pieces.length - 1;
  if (last < 0) return null;
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
              {k === last && (
                <button type="button" className="btn sq" onClick={() => step(takenOff)}>
                  <Icon name="take-off" />
                  <span className="vh">{say('trace.take-off', { kind: name, number: k + 1 })}</span>
                </button>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
