// What came of a photo: how good it is, or what is wrong with it and what to do.

import type { FittedCamera } from '@cairnmark/photo';
import type { ComponentChildren } from 'preact';
import type { BuildWords } from '../../app/use-build-words.ts';
import { decimals } from './decimals.ts';
import { PickPhoto } from './pick-photo.tsx';
import { looksLike, qualityOf, upOf } from './quality.ts';
import { markersOn } from './sheets.ts';
import { Told } from './told.tsx';
import { useTraceWords } from './trace-words.ts';
import type { SheetChoice, Shot, View } from './tracing.ts';

interface OutcomeOf {
  readonly shot: Shot;
  readonly view: View;
  readonly sheet: SheetChoice;
  readonly words: BuildWords;
  readonly pick: (file: File) => void;
  /** Another photo, or another sheet, ends what is traced. */
  readonly isLost: boolean;
  /** The choice of another sheet, where it does not stand open. */
  readonly choices: ComponentChildren;
}

export function Outcome({ shot: { read, share }, words, ...others }: OutcomeOf) {
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
  if (read.camera.ok) {
    const told = read.warning === null ? [] : trace.issue(read.warning, decimals(words));
    return (
      <>
        <Found camera={read.camera.value} words={words} {...others} />
        {told.length > 0 && <p className="warnbox">{told.join(' ')}</p>}
      </>
    );
  }
  const [issue] = read.camera.issues;
  const told = issue === undefined ? [] : trace.issue(issue, decimals(words));
  return <Told title={say('trace.take-again')} lines={read.fault === null ? told : [trace.fault(read.fault, {})]} />;
}

function Found({
  camera,
  view,
  sheet,
  words,
  pick,
  isLost,
  choices,
}: Omit<OutcomeOf, 'shot'> & { readonly camera: FittedCamera }) {
  const { say } = useTraceWords();
  const most = markersOn(sheet);
  const quality = qualityOf(view, camera, most);
  const isOther = looksLike(camera) !== view;
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
          {quality === 'fair' && !isOther && say(view === 'above' ? 'trace.tilt-more' : 'trace.up-more')}
        </p>
        {isOther && <p className="warnbox">{say(view === 'above' ? 'trace.is-side' : 'trace.is-above')}</p>}
      </div>
      {isOther && <PickPhoto isMain={false} pick={pick} />}
      <details className="trace-detail">
        <summary>{say('trace.detail')}</summary>
        <p>{say('trace.focal', { share: `${number(100 * camera.focalSigmaShare, 1)} %` })}</p>
        <p>{say('trace.rms', { pixels: number(camera.rmsPx, 2) })}</p>
        {!isOther && <PickPhoto isMain={false} pick={pick} />}
        {choices}
        {isLost && <p>{say('trace.anew')}</p>}
      </details>
    </>
  );
}
