// A shape that is not on the list, tapped corner by corner on the level of its edge.

import type { Layout, Vec2 } from '@cairnmark/geometry';
import type { PlanPose, TopShape } from '@cairnmark/photo';
import type { OutlineAnswer } from '../../workers/photo-questions.ts';
import type { Stood } from './heights.ts';
import type { KeptShape, ShapeInHand, Step } from './tracing.ts';
import { OTHER_BUILD } from './tracing.ts';

/** How high its edge is nobody knows yet: a height that is only likely would be believed. */
export const shapeBegun: Step = (before) => ({
  ...before,
  hand: null,
  shapeInHand: { taps: [], planeMm: null, onTable: true, closed: false, found: null, issue: null, kind: null },
});

export const shapePutAway: Step = (before) => ({ ...before, shapeInHand: null });

/** Another height or another say: what was found on the one before is no longer true. */
export const shapeSaid = (said: Partial<Pick<ShapeInHand, 'planeMm' | 'onTable' | 'kind'>>): Step =>
  changed((shape) => ({
    ...shape,
    ...said,
    ...(said.planeMm === undefined || said.planeMm === shape.planeMm ? {} : { found: null, issue: null }),
  }));

export const withCorner = (tap: Vec2): Step =>
  changed((shape) =>
    shape.closed || shape.taps.length >= MOST_CORNERS ? shape : { ...shape, taps: [...shape.taps, tap], issue: null },
  );

/** More than any paper solid has, and enough for a round one. */
const MOST_CORNERS = 60;

export const withoutCorner: Step = changed((shape) => ({
  ...shape,
  taps: shape.taps.slice(0, -1),
  closed: false,
  found: null,
  issue: null,
}));

export const withoutCorners: Step = changed((shape) => ({
  ...shape,
  taps: [],
  closed: false,
  found: null,
  issue: null,
}));

export const canClose = ({ taps, closed, planeMm }: ShapeInHand): boolean =>
  taps.length >= 3 && !closed && planeMm !== null;

export const shapeClosed: Step = changed((shape) => (canClose(shape) ? { ...shape, closed: true } : shape));

/** What came of the taps on an edge so high; for what was asked about alone. */
export const withOutline = (taps: readonly Vec2[], planeMm: number, answer: OutlineAnswer): Step =>
  changed((shape) => {
    if (shape.taps !== taps || shape.planeMm !== planeMm) return shape;
    return answer.ok ? { ...shape, found: answer.value } : { ...shape, closed: false, issue: answer.issues[0] ?? null };
  });

export const shapeKept: Step = (before) => {
  const shape = before.shapeInHand;
  if (shape === null || shape.found === null || shape.planeMm === null) return before;
  const { found, planeMm, onTable, kind } = shape;
  return { ...before, ...OTHER_BUILD, shapes: [...before.shapes, { shape: found, planeMm, onTable, kind }] };
};

export const shapeTakenOff: Step = (before) => ({ ...before, ...OTHER_BUILD, shapes: before.shapes.slice(0, -1) });

/** The top of a shape as the photo from the side shows it: its corners about their middle. */
export function topOfShape({ shape: { outline } }: KeptShape): { readonly shape: TopShape; readonly pose: PlanPose } {
  const { points } = outline;
  const mean = (axis: 0 | 1): number => points.reduce((sum, point) => sum + point[axis], 0) / points.length;
  const [xMm, yMm] = [mean(0), mean(1)];
  const corners = points.map(([x, y]) => [x - xMm, y - yMm, 0] as const);
  return { shape: { kind: 'corners', corners }, pose: { xMm, yMm, turnRad: 0 } };
}

/**
 * All that was traced as one build. With a shape among the pieces it is known by outlines alone: what touches what does not show
 * on a photo from above.
 */
export function tracedLayout(stood: readonly Stood[], shapes: readonly KeptShape[], heightMm: number | null): Layout {
  if (shapes.length === 0) return { kind: 'laid-out', pieces: stood.map(({ laid }) => laid), traced: true };
  const pieces = stood.map(({ piece: { outline, topMm, bottomMm } }) => {
    return { outline, planeMm: topMm, onTable: bottomMm === 0 };
  });
  const free = shapes.map(({ shape: { outline }, planeMm, onTable }) => ({ outline, planeMm, onTable }));
  const kinds = [...stood.map(({ laid }) => laid.kind), ...shapes.map(({ kind }) => kind)];
  return {
    kind: 'traced',
    outlines: [...pieces, ...free],
    pieces: kinds.flatMap((kind) => (kind === null ? [] : [kind])),
    ...(heightMm === null ? {} : { heightMm }),
  };
}

function changed(change: (shape: ShapeInHand) => ShapeInHand): Step {
  return (before) => {
    if (before.shapeInHand === null) return before;
    const shape = change(before.shapeInHand);
    return shape === before.shapeInHand ? before : { ...before, shapeInHand: shape };
  };
}
