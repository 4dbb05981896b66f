// The marks of why a build stands or falls: balance point, plumb line, edge and arrow. px from the upper left corner.

import type { Vec2, Vec3 } from '@cairnmark/geometry';
import { linePath } from '../drawing/paths.ts';
import type { Camera } from './camera.ts';
import { toCanvas } from './camera.ts';
import type { Mark } from './marks.ts';
import { headPath } from './marks.ts';
import type { OverlayMark } from './overlay-of.ts';

/** Balance point, plumb line, edge and arrow of pieces that move; `tone` is "ink" or "bad". */
export function whyMarks(camera: Camera, mark: OverlayMark, tone: 'ink' | 'bad'): readonly Mark[] {
  const place = (point: Vec3): Vec2 => toCanvas(camera, point);
  const [balance, foot] = [place(mark.balance), place(mark.plumbFoot)];
  const arrow = mark.arrow.map(place);
  return [
    ...(mark.hinge === null ? [] : hingeMarks(place(mark.hinge[0]), place(mark.hinge[1]), tone)),
    ...plumbMarks(balance, foot, tone),
    ...arrowMarks(arrow, tone),
    { kind: 'circle', look: `balance ${tone}`, at: balance, radiusPx: 7 },
    { kind: 'circle', look: `balance-dot ${tone}`, at: balance, radiusPx: 3 },
  ];
}

/** A line with a bob; from above it is a point, under the balance point. */
function plumbMarks(balance: Vec2, foot: Vec2, tone: string): readonly Mark[] {
  if (Math.hypot(foot[0] - balance[0], foot[1] - balance[1]) < SHORTEST_ARROW_PX) return [];
  return [
    ...twice('plumb', linePath([balance, foot], 1), tone),
    { kind: 'path', look: `bob ${tone}`, d: headPath(balance, foot, 11, 5) },
  ];
}

function hingeMarks(from: Vec2, to: Vec2, tone: string): readonly Mark[] {
  const isPoint = Math.hypot(to[0] - from[0], to[1] - from[1]) < 1;
  if (!isPoint) return twice('hinge', linePath([from, to], 1), tone);
  return [{ kind: 'circle', look: `hinge-point ${tone}`, at: from, radiusPx: 5 }];
}

/** An arrow that is seen nearly end on tells nothing. */
function arrowMarks(arrow: readonly Vec2[], tone: string): readonly Mark[] {
  const [tail, before, head] = [arrow[0], arrow.at(-2), arrow.at(-1)];
  if (tail === undefined || before === undefined || head === undefined) return [];
  if (Math.hypot(head[0] - tail[0], head[1] - tail[1]) < SHORTEST_ARROW_PX) return [];
  // The line ends inside the head: past its tip the round end would show.
  const shaft = arrow.filter((point) => Math.hypot(head[0] - point[0], head[1] - point[1]) > HEAD_PX - 2);
  return [
    ...twice('way', linePath(shaft, 1), tone),
    { kind: 'path', look: `way-head ${tone}`, d: headPath(before, head, HEAD_PX, 7) },
  ];
}

const HEAD_PX = 13;
const SHORTEST_ARROW_PX = 18;

/** A line and the light rim under it, so that it is seen on any colour. */
const twice = (look: string, d: string, tone: string): readonly Mark[] => [
  { kind: 'path', look: `${look}-rim`, d },
  { kind: 'path', look: `${look} ${tone}`, d },
];
