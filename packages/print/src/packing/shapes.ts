// The outlines of all items, each prepared once: items that have the same one share it.

import type { Vec2 } from '@cairnmark/geometry';
import type { PrintIssue } from '../issue.ts';
import type { Probe } from './find-place.ts';
import { probesOf } from './find-place.ts';
import type { Pose } from './poses.ts';
import { posesOf } from './poses.ts';
import type { Item, Space } from './types.ts';

export interface Shape {
  /** The same for the same corners. */
  readonly key: string;
  readonly poses: readonly { readonly pose: Pose; readonly probes: readonly Probe[] }[];
  /** mm2. Of the smallest level box round it, in any of its turns: what is placed first. */
  readonly boxMm2: number;
}

export interface Prepared {
  readonly item: Item;
  readonly shape: Shape;
}

/** Every item with its shape, in the same order; `refuse` is told of each that fits the page at no turn. */
export function prepared(
  items: readonly Item[],
  space: Space,
  refuse: (issue: PrintIssue) => void,
): readonly Prepared[] {
  const shapes = new Map<string, Shape>();
  return items.map((item, k) => {
    const key = keyOf(item.outline);
    const shape = shapes.get(key) ?? shapeOf(key, item.outline, space);
    shapes.set(key, shape);
    if (shape.poses.length === 0) {
      refuse({ code: 'outline-too-large', path: ['items', k], details: { id: item.id, ...space } });
    }
    return { item, shape };
  });
}

const keyOf = (outline: readonly Vec2[]): string => outline.map((corner) => corner.join()).join(' ');

function shapeOf(key: string, outline: readonly Vec2[], space: Space): Shape {
  if (outline.length < 3) throw new RangeError(`an outline with ${outline.length} corners`);
  const poses = posesOf(outline, space).map((pose) => ({ pose, probes: probesOf(pose) }));
  return { key, poses, boxMm2: Math.min(...poses.map(({ pose }) => pose.widthMm * pose.heightMm)) };
}
