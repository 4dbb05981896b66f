// The first step of either view: a photo, how good it is, and what to do when it is not.

import type { BuildWords } from '../../app/use-build-words.ts';
import { Outcome } from './photo-outcome.tsx';
import { PickPhoto } from './pick-photo.tsx';
import { SheetChoices } from './sheet-choices.tsx';
import { markersOn } from './sheets.ts';
import { useTraceWords } from './trace-words.ts';
import type { SheetChoice, View } from './tracing.ts';
import { onSheet, withFile } from './tracing.ts';
import type { TracingAtWork } from './use-tracing.ts';

export function PhotoStep({ tracing, step, words }: TracingAtWork & { readonly words: BuildWords }) {
  const { say } = useTraceWords();
  const { view, sheet } = tracing;
  const isLost = view === 'above' && tracing.pieces.length + tracing.shapes.length > 0;
  const shot = tracing.shots[view];
  const pick = (file: File): void => step(withFile(view, file));
  const isWarned =
    shot !== null &&
    shot.read !== null &&
    shot.read !== 'failed' &&
    shot.read.photo !== null &&
    shot.read.warning !== null;
  const isReady =
    shot?.read !== null && shot !== null && shot.read !== 'failed' && shot.read.photo !== null && shot.read.camera.ok;
  const choices = view === 'above' ? <SheetChoices sheet={sheet} choose={(to) => step(onSheet(to))} /> : null;
  const isOpen = !isReady || isWarned;
  return (
    <section className="trace-step" aria-busy={shot !== null && shot.read === null}>
      {shot === null ? (
        <h2>{say(view === 'above' ? 'trace.first-above' : 'trace.first-side')}</h2>
      ) : (
        <Outcome {...{ shot, view, sheet, words, pick, isLost }} choices={isOpen ? null : choices} />
      )}
      {!isReady && shot?.read !== null && <How view={view} sheet={sheet} />}
      {isOpen && choices}
      {!isReady && shot?.read !== null && <PickPhoto isMain pick={pick} />}
      {isLost && isOpen && <p className="mut">{say('trace.anew')}</p>}
    </section>
  );
}

function How({ view, sheet }: { readonly view: View; readonly sheet: SheetChoice }) {
  const { say } = useTraceWords();
  const isPlain = markersOn(sheet) === 0;
  return (
    <ul className="trace-how">
      <li>{say(isPlain ? 'trace.how-plain' : 'trace.how-sheet')}</li>
      <li>{say(view === 'above' ? 'trace.how-above' : 'trace.how-side')}</li>
      {!isPlain && <li>{say('trace.how-hands')}</li>}
      <li>{say('trace.only-pieces')}</li>
    </ul>
  );
}
