// A drawn line: straight pieces and cubic curves, mm. Frame: x right, y up, as it lies on the paper.

import type { Vec2 } from '@cairnmark/geometry';

export interface Path {
  readonly start: Vec2;
  readonly steps: readonly PathStep[];
  readonly closed: boolean;
}

export type PathStep =
  | { readonly kind: 'line'; readonly to: Vec2 }
  | { readonly kind: 'curve'; readonly c1: Vec2; readonly c2: Vec2; readonly to: Vec2 };
