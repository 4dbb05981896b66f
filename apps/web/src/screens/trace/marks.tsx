// What is drawn over a photo: the markers that were found, the pieces that stand, the piece in hand, taps, the top.

import type { Vec2 } from '@cairnmark/geometry';
import type { FittedCamera, FoundMarker, PaperId } from '@cairnmark/photo';
import { imagePoint, paperSizeMm, topEnds } from '@cairnmark/photo';
import type { RulerUnit } from '../../drawing/ruler-marks.ts';
import { SQUARES } from '../../drawing/sheet.ts';
import { figurePixels } from '../../photo/figure-pixels.ts';
import type { Stood, TopOf } from './heights.ts';
import type { KeptShape } from './tracing.ts';

/** Each line twice: a dark one under a bright one is seen on any ground. */
function Line({ d, kind }: { readonly d: string; readonly kind: string }) {
  return (
    <>
      <path className="trace-under" d={d} />
      <path className={kind} d={d} />
    </>
  );
}

/** As large on the page as a finger can see, however small the photo is shown. */
const Dot = ({ at: [x, y] }: { readonly at: Vec2 }) => (
  <>
    <path className="trace-dot-under" d={`M${x} ${y}h.01`} />
    <path className="trace-dot" d={`M${x} ${y}h.01`} />
  </>
);

const closed = (points: readonly Vec2[]): string =>
  points.length === 0 ? '' : `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}Z`;

export function MarkerMarks({
  markers,
  used,
}: {
  readonly markers: readonly FoundMarker[];
  readonly used: readonly number[];
}) {
  return (
    <>
      {markers.map(({ id, corners }) => (
        <Line key={id} d={closed(corners)} kind={used.includes(id) ? 'trace-marker' : 'trace-stray'} />
      ))}
    </>
  );
}

/** The edges of a plain sheet, where they were found. */
export function EdgeMarks({ camera, paper }: { readonly camera: FittedCamera; readonly paper: PaperId }) {
  const [across, along] = paperSizeMm(paper);
  const corners = [-1, 1, 1, -1].map((side, k) =>
    imagePoint(camera, [(side * across) / 2, ((k < 2 ? 1 : -1) * along) / 2, 0]),
  );
  return <Line d={closed(corners.flatMap((corner) => (corner === null ? [] : [corner])))} kind="trace-marker" />;
}

export function PieceMarks({
  camera,
  stood,
  hand,
}: {
  readonly camera: FittedCamera;
  readonly stood: readonly Stood[];
  readonly hand: Stood | null;
}) {
  const outline = ({ laid, piece }: Stood): string => closed(figurePixels(camera, laid, piece)?.points ?? []);
  return (
    <>
      {stood.map((one, k) => (
        <Line key={k} d={outline(one)} kind="trace-done" />
      ))}
      {hand !== null && <Line d={outline(hand)} kind="trace-hand" />}
    </>
  );
}

/** Shapes that are not on the list: those that are done, and the one in hand. */
export function ShapeMarks({
  camera,
  shapes,
  found,
}: {
  readonly camera: FittedCamera;
  readonly shapes: readonly KeptShape[];
  readonly found: Pick<KeptShape, 'shape' | 'planeMm'> | null;
}) {
  const outline = ({ shape, planeMm }: Pick<KeptShape, 'shape' | 'planeMm'>): string =>
    closed(
      shape.outline.points.flatMap(([x, y]) => {
        const at = imagePoint(camera, [x, y, planeMm]);
        return at === null ? [] : [at];
      }),
    );
  return (
    <>
      {shapes.map((one, k) => (
        <Line key={k} d={outline(one)} kind="trace-done" />
      ))}
      {found !== null && <Line d={outline(found)} kind="trace-hand" />}
    </>
  );
}

/** From corner to corner, as far as they are tapped. */
export const CornerMarks = ({ taps }: { readonly taps: readonly Vec2[] }) =>
  taps.length < 2 ? null : <Line d={`M${taps.map(([x, y]) => `${x} ${y}`).join('L')}`} kind="trace-hand" />;

export const TapMarks = ({ taps }: { readonly taps: readonly Vec2[] }) => (
  <>
    {taps.map((tap, k) => (
      <Dot key={k} at={tap} />
    ))}
  </>
);

/** A level line through the top, and a staff with a mark each centimetre or inch that stands on the sheet below it. */
export function TopMarks({
  camera,
  highest: { pose, shape },
  heightMm,
  ends,
  unit,
}: {
  readonly camera: FittedCamera;
  readonly highest: TopOf;
  readonly heightMm: number;
  readonly ends: readonly number[];
  readonly unit: RulerUnit;
}) {
  const { squareMm, boldEvery } = SQUARES[unit];
  const at = (xMm: number, yMm: number, zMm: number): Vec2 | null => imagePoint(camera, [xMm, yMm, zMm]);
  const beside = awayMm(camera);
  const level = [-1.6, 1.6].map((times) => at(pose.xMm + times * beside[0], pose.yMm + times * beside[1], heightMm));
  const [left, right] = level;
  const [x, y] = [pose.xMm + 1.4 * beside[0], pose.yMm + 1.4 * beside[1]];
  const ticks = Array.from({ length: Math.floor(heightMm / squareMm) + 1 }, (_, k) => {
    const long = k % boldEvery === 0 ? 0.18 : 0.1;
    const [from, to] = [at(x, y, k * squareMm), at(x + long * beside[0], y + long * beside[1], k * squareMm)];
    return from && to ? `M${from.join(' ')}L${to.join(' ')}` : '';
  });
  const [foot, head] = [at(x, y, 0), at(x, y, heightMm)];
  const seen = topEnds(camera, shape, pose, heightMm, ends).map((point) => imagePoint(camera, point));
  return (
    <>
      {left && right && <Line d={`M${left.join(' ')}L${right.join(' ')}`} kind="trace-hand" />}
      {foot && head && <Line d={`M${foot.join(' ')}L${head.join(' ')}${ticks.join('')}`} kind="trace-hand" />}
      {seen.map((end, k) => end !== null && <Dot key={k} at={end} />)}
    </>
  );
}

/** mm. Half the width of what the line stands over. */
const BESIDE_MM = 45;

/** Level, and across the line of sight. */
function awayMm({ rotation }: FittedCamera): Vec2 {
  const [x, y] = [rotation[0], rotation[1]];
  const length = Math.hypot(x, y);
  return length === 0 ? [BESIDE_MM, 0] : [(BESIDE_MM * x) / length, (BESIDE_MM * y) / length];
}
