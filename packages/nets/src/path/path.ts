// Lines of a drawing, in mm on the sheet: x to the right, y up. What a writer of pages needs and no more.

import type { Vec2 } from '@cairnmark/geometry';

/** From where the path is: straight to a point, or along a cubic with two control points. */
export type PathStep =
  | { readonly kind: 'line'; readonly to: Vec2 }
  | { readonly kind: 'curve'; readonly c1: Vec2; readonly c2: Vec2; readonly to: Vec2 };

/** A closed path goes straight back to its start; round a figure it runs counter-clockwise. */
export interface Path {
  readonly start: Vec2;
  readonly steps: readonly PathStep[];
  readonly closed: boolean;
}

/** Straight from point to point. Throws RangeError when there is no point. */
export function straightPath(points: readonly Vec2[], closed: boolean): Path {
  const [start, ...others] = points;
  if (start === undefined) throw new RangeError('a path begins at a point');
  return { start, steps: others.map(lineTo), closed };
}

export const lineTo = (to: Vec2): PathStep => ({ kind: 'line', to });

/** Where a path ends before it is closed. */
export const endOf = ({ start, steps }: Path): Vec2 => steps.at(-1)?.to ?? start;

/** The path with each of its points, controls included, sent through `send`: a turn, a shift, a change of scale. */
export function sendPath(path: Path, send: (point: Vec2) => Vec2): Path {
  const steps = path.steps.map(
    (step): PathStep =>
      step.kind === 'line'
        ? lineTo(send(step.to))
        : { kind: 'curve', c1: send(step.c1), c2: send(step.c2), to: send(step.to) },
  );
  return { start: send(path.start), steps, closed: path.closed };
}

/** Turned about the origin, counter-clockwise, then moved. */
export function turnPath(path: Path, turnRad: number, shift: Vec2): Path {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return sendPath(path, ([x, y]) => [cos * x - sin * y + shift[0], sin * x + cos * y + shift[1]]);
}
