// The first step of either view: a photo, how good it is, and what to do when it is not.

import type { FittedCamera } from '@cairnmark/photo';
import type { BuildWords } from '../../app/use-build-words.ts';
import { PickPhoto } from './pick-photo.tsx';
import { qualityOf, upOf } from './quality.ts';
import { markersOn } from './sheets.ts';
import { Told } from './told.tsx';
import { useTraceWords } from './trace-words.ts';
import type { SheetChoice, Shot, Tracing, View } from './tracing.ts';
import { onSheet, withFile } from './tracing.ts';
import type { TracingAtWork } from './use-tracing.ts';

const SHEETS: readonly SheetChoice[] = ['ground', 'fort'];

export function PhotoStep({ tracing, step, words }: TracingAtWork & { readonly words: BuildWords }) {
  const { say } = useTraceWords();
  const { view, sheet } = tracing;
  const shot = tracing.shots[view];
  const pick = (file: File): void => step(withFile(view, file));
  const isReady =
    shot?.read !== null && shot !== null && shot.read !== 'failed' && shot.read.photo !== null && shot.read.camera.ok;
  return (
    <section className="trace-step" aria-busy={shot !== null && shot.read === null}>
      {shot === null ? (
        <h2>{say(view === 'above' ? 'trace.first-above' : 'trace.first-side')}</h2>
      ) : (
        <Outcome {...{ shot, view, sheet, words, pick }} />
      )}
      {!isReady && shot?.read !== null && <How view={view} sheet={sheet} />}
      {view === 'above' && !isReady && (
        <label>
          {say('trace.sheet')}
          <select
            className="in"
            value={sheet}
            onChange={({ currentTarget }) => step(onSheet(SHEETS.find((id) => id === currentTarget.value) ?? 'ground'))}
          >
            {SHEETS.map((id) => (
              <option key={id} value={id}>
                {say(`trace.sheet-${id}`)}
              </option>
            ))}
          </select>
        </label>
      )}
      {!isReady && shot?.read !== null && <PickPhoto isMain pick={pick} />}
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

interface OutcomeOf {
  readonly shot: Shot;
  readonly view: View;
  readonly sheet: Tracing['sheet'];
  readonly words: BuildWords;
  readonly pick: (file: File) => void;
}

function Outcome({ shot: { read, share }, view, sheet, words, pick }: OutcomeOf) {
  const trace = useTraceWords();
  const { say } = trace;
  if (read === null) {
    return (
      <p role="status">
        {say('trace.reading')} <progress value={share} aria-label={say('trace.reading')} />
      </p>
    );
  }
  if (read === 'failed') return <Told title={say('trace.take-again')} lines={[say('trace.failed')]} />;
  if (read.photo === null)
    return <Told title={say('trace.take-again')} lines={[trace.fault(read.fault, read.details)]} />;
  if (read.camera.ok) return <Found camera={read.camera.value} {...{ view, sheet, words, pick }} />;
  const [issue] = read.camera.issues;
  const told = issue === undefined ? [] : trace.issue(issue, decimals(words));
  return <Told title={say('trace.take-again')} lines={read.fault === null ? told : [trace.fault(read.fault, {})]} />;
}

/** Numbers with so many decimals at most, as the language writes them. */
export const decimals =
  ({ words }: BuildWords) =>
  (value: number, most: number): string =>
    words.number(Number(value.toFixed(most)));

function Found({ camera, view, sheet, words, pick }: Omit<OutcomeOf, 'shot'> & { readonly camera: FittedCamera }) {
  const { say } = useTraceWords();
  const most = markersOn(sheet);
  const quality = qualityOf(view, camera, most);
  const number = decimals(words);
  const degrees = (rad: number): string => `${number((rad * 180) / Math.PI, 0)}°`;
  return (
    <>
      <div role="status">
        <h2>{say(`trace.${quality}`)}</h2>
        <p className="mut">
          {most === 0 ? say('trace.edges') : say('trace.markers', { found: camera.markers.length, most })}{' '}
          {view === 'above'
            ? say('trace.tilt', { tilt: degrees(camera.tiltRad) })
            : say('trace.camera-up', { up: degrees(upOf(camera)) })}{' '}
          {quality === 'fair' && say(view === 'above' ? 'trace.tilt-more' : 'trace.up-more')}
        </p>
      </div>
      <details className="trace-detail">
        <summary>{say('trace.detail')}</summary>
        <p>{say('trace.focal', { share: `${number(100 * camera.focalSigmaShare, 1)} %` })}</p>
        <p>{say('trace.rms', { pixels: number(camera.rmsPx, 2) })}</p>
        <PickPhoto isMain={false} pick={pick} />
      </details>
    </>
  );
}
