// The photo of the view at work, with what is found and traced drawn over it.

import type { Ruler } from '@cairnmark/geometry';
import { tapsFor } from '@cairnmark/photo';
import type { RulerUnit } from '../../drawing/ruler-marks.ts';
import { tapsAsked, withoutTap, withTap } from './hand.ts';
import { camerasOf, heightOf, highestOf } from './heights.ts';
import { HowDrawing } from './how-drawing.tsx';
import { CornerMarks, EdgeMarks, MarkerMarks, PieceMarks, ShapeMarks, TapMarks, TopMarks } from './marks.tsx';
import { PhotoView } from './photo-view.tsx';
import { regionOf } from './region.ts';
import { withCorner, withoutCorner } from './shape.ts';
import type { TraceShown } from './shown.ts';
import { useTraceWords } from './trace-words.ts';
import { TracedDrawing } from './traced-drawing.tsx';
import { withoutTopTap, withTopTap } from './tracing.ts';

const unitOf = ({ unit }: Ruler): RulerUnit => (unit === 'in' ? 'in' : 'cm');

export function PhotoPart(shown: TraceShown) {
  const { tracing } = shown;
  const read = tracing.shots[tracing.view]?.read;
  const isSeen = read !== null && read !== undefined && read !== 'failed' && read.photo !== null;
  const layout = shown.at.attempt?.layout;
  if (!isSeen && tracing.shots[tracing.view] === null && layout?.kind === 'traced') {
    return (
      <div className="trace-photo">
        <TracedDrawing outlines={layout.outlines} unit={unitOf(shown.words.ruler)} />
      </div>
    );
  }
  if (!isSeen) {
    return (
      <div className="trace-photo trace-none">
        <HowDrawing view={tracing.view} />
      </div>
    );
  }
  return tracing.view === 'above' ? <Above {...shown} /> : <Side {...shown} />;
}

function Above({ tracing, step, bench, above, stood, hand }: TraceShown) {
  const { say } = useTraceWords();
  const read = tracing.shots.above?.read;
  if (read === null || read === undefined || read === 'failed' || read.photo === null) return null;
  const inHand = tracing.hand;
  const asked = inHand === null ? 0 : tapsAsked(bench.solids.get(inHand.kind), inHand.resting);
  const shape = tracing.shapeInHand;
  const canTap =
    above !== null && ((inHand !== null && inHand.taps.length < asked) || (shape !== null && !shape.closed));
  const [found, planeMm] = [shape?.found ?? null, shape?.planeMm ?? null];
  return (
    <PhotoView
      photo={read.photo}
      region={regionOf(read.photo, above?.camera ?? null)}
      label={say('trace.photo-above')}
      canTap={canTap}
      tap={(at) => step(shape === null ? withTap(at, asked) : withCorner(at))}
      tapBack={() => step(shape === null ? withoutTap : withoutCorner)}
    >
      <MarkerMarks markers={read.markers} used={above?.camera.markers ?? []} />
      {above !== null && read.markers.length === 0 && <EdgeMarks camera={above.camera} paper={tracing.sheet.paper} />}
      {above !== null && <PieceMarks camera={above.camera} stood={stood} hand={hand} />}
      {above !== null && (
        <ShapeMarks
          camera={above.camera}
          shapes={tracing.shapes}
          found={found === null || planeMm === null ? null : { shape: found, planeMm }}
        />
      )}
      {shape !== null && found === null && <CornerMarks taps={shape.taps} />}
      <TapMarks taps={inHand?.taps ?? shape?.taps ?? []} />
    </PhotoView>
  );
}

function Side({ tracing, step, side, stood, words }: TraceShown) {
  const { say } = useTraceWords();
  const read = tracing.shots.side?.read;
  if (read === null || read === undefined || read === 'failed' || read.photo === null) return null;
  const highest = highestOf(stood, tracing.shapes, tracing.highest);
  const [first] = highest;
  const asked = first === undefined ? 0 : tapsFor(first.shape);
  const { taps } = tracing.top;
  const found =
    side !== null && first !== undefined && taps.length === asked
      ? heightOf(camerasOf(side), highest, tracing.top)
      : null;
  return (
    <PhotoView
      photo={read.photo}
      region={regionOf(read.photo, side?.camera ?? null)}
      label={say('trace.photo-side')}
      canTap={side !== null && taps.length < asked}
      tap={(at) => step(withTopTap(at, asked))}
      tapBack={() => step(withoutTopTap)}
    >
      <MarkerMarks markers={read.markers} used={side?.camera.markers ?? []} />
      {side !== null && read.markers.length === 0 && <EdgeMarks camera={side.camera} paper={tracing.sheet.paper} />}
      <TapMarks taps={taps} />
      {found?.ok && <TopMarks {...found.value} unit={unitOf(words.ruler)} />}
    </PhotoView>
  );
}
