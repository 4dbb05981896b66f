// The door "Trace it": a photo from above says where the pieces stand, one from the side how high the build is. Loaded when it is
// opened. Photos are kept in the memory of the page alone.

import type { Bench } from '@cairnmark/editing';
import { loadTraceWords } from '@cairnmark/words';
import { useCallback } from 'preact/hooks';
import { Arriving } from '../../app/arriving.tsx';
import type { BuildWords } from '../../app/use-build-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { Choice } from '../../parts/choice.tsx';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import { HandStep } from './hand-step.tsx';
import { stoodOf } from './heights.ts';
import { PhotoPart } from './photo-part.tsx';
import { PhotoStep } from './photo-step.tsx';
import { DoneRows, KindRows } from './piece-rows.tsx';
import { tracedLayout } from './shape.ts';
import { ShapeStep } from './shape-step.tsx';
import type { TraceShown } from './shown.ts';
import { SideSteps } from './side-steps.tsx';
import './shape.css';
import { SoFar } from './so-far.tsx';
import './trace.css';
import { handPiece } from './hand.ts';
import { kindsLeft } from './kinds-left.ts';
import { TraceHelp } from './trace-help.tsx';
import { TraceContext, useTraceWords } from './trace-words.ts';
import type { View } from './tracing.ts';
import { measured, toView, withoutPhotos } from './tracing.ts';
import { useFocusNear } from './use-focus-near.ts';
import type { Keep } from './use-tracing.ts';
import { useTracing } from './use-tracing.ts';

const SCORE_CARD = '/score';

const VIEWS: readonly View[] = ['above', 'side'];

interface DoorOf {
  readonly at: At;
  readonly words: BuildWords;
  readonly bench: Bench;
  readonly scale: number;
  readonly help: boolean;
  readonly keep: Keep;
  /** Called when the build is done. */
  readonly done: () => void;
}

export default function TraceDoor(props: DoorOf) {
  const { language } = useScreenWords();
  const ask = useCallback(() => loadTraceWords(language), [language]);
  return (
    <Arriving ask={ask}>
      {(words) => (
        <TraceContext value={words}>
          <Door {...props} />
        </TraceContext>
      )}
    </Arriving>
  );
}

function Door({ at, words, bench, scale, help, keep, done }: DoorOf) {
  const { say } = useTraceWords();
  const atWork = useTracing(keep, bench, words.ruler.unit === 'in' ? 'letter' : 'a4');
  const steps = useFocusNear<HTMLDivElement>();
  const { tracing, step } = atWork;
  const layOut = useSession((session) => session.layOut);
  const piece = handPiece(tracing);
  const stood = stoodOf(tracing.pieces, bench);
  const hand = piece === null ? null : (stoodOf([...tracing.pieces, piece], bench).at(-1) ?? null);
  const [above, side] = [measured(tracing, 'above'), measured(tracing, 'side')];
  const shown: TraceShown = { ...atWork, at, words, bench, scale, above, side, stood, hand };
  const use = (heightMm: number | null): void => {
    layOut(tracedLayout(stood, tracing.shapes, heightMm), heightMm);
    // A build of outlines alone has nothing to show in space.
    if (tracing.shapes.length === 0) done();
    else location.hash = SCORE_CARD;
  };
  const hasTraced = tracing.pieces.length + tracing.shapes.length > 0;
  // With something in hand, what to do with it stands in sight; the photo was said to be good before.
  const isBusy =
    tracing.view === 'above'
      ? tracing.hand !== null || tracing.shapeInHand !== null
      : side !== null && tracing.top.taps.length > 0;
  const hasPhoto = tracing.shots.above !== null || tracing.shots.side !== null;
  const hasOld = (at.attempt?.layout.pieces.length ?? 0) > 0;
  return (
    <>
      <PhotoPart {...shown} />
      <div className="trace-steps" ref={steps} tabIndex={-1}>
        <TraceHelp on={help} />
        <Choice
          label={say('trace.which')}
          hideLabel
          options={VIEWS.map((id) => ({ id, text: say(`trace.${id}`) }))}
          chosen={tracing.view}
          choose={(view) => step(toView(view))}
        />
        {!isBusy && <PhotoStep {...atWork} words={words} />}
        {tracing.view === 'above' && above !== null && <AboveSteps {...shown} />}
        {tracing.view === 'above' && <DoneRows {...shown} />}
        {tracing.view === 'above' && <SoFar {...shown} />}
        {tracing.view === 'above' && hasTraced && !isBusy && (
          <button type="button" className="btn main" onClick={() => step(toView('side'))}>
            {say('trace.to-side')}
          </button>
        )}
        {tracing.view === 'side' && <SideSteps {...shown} use={use} />}
        {tracing.view === 'side' && hasOld && hasTraced && <p className="mut">{say('trace.old')}</p>}
        <footer className="trace-foot">
          <p className="mut">{say('trace.stays')}</p>
          {hasPhoto && (
            <button type="button" className="btn" onClick={() => step(withoutPhotos)}>
              {say('trace.delete')}
            </button>
          )}
        </footer>
      </div>
    </>
  );
}

function AboveSteps(shown: TraceShown) {
  const { say } = useTraceWords();
  const { tracing, bench } = shown;
  const isPicking = tracing.hand === null && tracing.shapeInHand === null;
  const isLeft = [...kindsLeft(tracing, bench).values()].some((count) => count > 0);
  return (
    <>
      <section className="trace-step">
        <h2 className={isPicking ? undefined : 'vh'}>{say(isLeft || !isPicking ? 'trace.pick' : 'trace.none-left')}</h2>
        <KindRows {...shown} />
      </section>
      <HandStep {...shown} />
      <ShapeStep {...shown} />
    </>
  );
}
