// The bars of a challenge's board with the ruler they lie on: one ruler for all pages, so that no bar jumps.

import { POINTS_ID } from '@cairnmark/engine';
import type { Axis } from './axis.ts';
import { axisOf } from './axis.ts';
import type { Bar } from './bars.ts';
import { barOf, reachOf } from './bars.ts';
import type { BoardLine } from './lines.ts';
import type { Scene } from './scene.ts';

export interface Drawing {
  readonly axis: Axis;
  /** Unit of the ruler as it is printed on it. */
  readonly unit: string;
  /** By group; those without a place have none. */
  readonly bars: ReadonlyMap<string, Bar>;
}

export function drawingOf(lines: readonly BoardLine[], { challenge, inClass }: Scene): Drawing {
  const { by } = challenge.ranking.first;
  const unit = inClass.unit(by);
  const bars = new Map(
    lines.flatMap((line) => {
      const bar = line.place === null ? null : barOf(line, challenge, unit.size);
      return bar === null ? [] : [[line.group, bar] as const];
    }),
  );
  const { least, most } = reachOf([...bars.values()]);
  const name = by === POINTS_ID || unit.name === '' ? inClass.label(by) : unit.name;
  return { bars, unit: name, axis: axisOf(least, most, unit.name === 'in') };
}
