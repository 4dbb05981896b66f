// Layouts of any kind.

import type { Layout, Outline } from '@cairnmark/geometry';
import fc from 'fast-check';
import { listOf, number, optional, sizeMm } from './parts.ts';

const positionMm = number(-900, 900);
const outline: fc.Arbitrary<Outline> = fc.oneof(
  fc.record({
    kind: fc.constant('polygon' as const),
    points: fc.array(fc.tuple(positionMm, positionMm), { minLength: 3, maxLength: 5 }),
  }),
  fc.record({ kind: fc.constant('disc' as const), centre: fc.tuple(positionMm, positionMm), radiusMm: sizeMm }),
);

/** A layout of pieces of these kinds; whether they can be stacked so is not asked here. */
export function layoutOf(kinds: readonly string[]): fc.Arbitrary<Layout> {
  const kind = fc.constantFrom(...kinds);
  const piece = fc
    .tuple(
      fc.record({
        kind,
        resting: fc.constantFrom('base', 'side'),
        xMm: positionMm,
        yMm: positionMm,
        turnRad: number(-6, 6),
      }),
      optional({
        on: fc.constant('table' as const),
        held: fc.constantFrom('taped' as const, 'glued' as const, 'leaning' as const, 'nested' as const),
        weighed: fc.record({ massG: number(0.1, 900) }),
      }),
    )
    .map(([laid, more]) => ({ ...laid, ...more }));
  const traced = fc
    .tuple(
      fc.record({
        kind: fc.constant('traced' as const),
        outlines: listOf(fc.record({ outline, planeMm: sizeMm, onTable: fc.boolean() })),
        pieces: listOf(kind),
      }),
      optional({ heightMm: sizeMm }),
    )
    .map(([build, height]) => ({ ...build, ...height }));
  return fc.oneof(
    fc
      .tuple(
        fc.record({ kind: fc.constant('laid-out' as const), pieces: listOf(piece) }),
        optional({ traced: fc.constant(true as const) }),
      )
      .map(([build, more]) => ({ ...build, ...more })),
    traced,
    fc.record({ kind: fc.constant('numbers-only' as const), pieces: listOf(kind) }),
  );
}
