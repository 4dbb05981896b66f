// How the time to measure a whole build grows with its pieces. Builds spread out over the floor, in rows: a third of
// the pieces on the table, a third on these, a third on top.

import type { LaidPiece, MeasureOptions, PieceKinds } from '@cairnmark/geometry';
import { CONTACT_MM, measureBuild } from '@cairnmark/geometry';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'Measuring a whole build: height, footprint, base, surface, sums, with tolerances';

const KINDS: PieceKinds = new Map([
  ['brick', { solid: 'rectangular-prism', sizes: { length: 60, width: 40, height: 30 } }],
  ['drum', { solid: 'cylinder', sizes: { radius: 20, height: 50 } }],
  ['tip', { solid: 'cone', sizes: { radius: 15, height: 40 } }],
]);

const OPTIONS: MeasureOptions = {
  counting: 'flat-and-curved-apart',
  base: 'outline-of-pieces-on-table',
  gapAllowanceMm: CONTACT_MM,
  rulerStepMm: 1,
};

const SIZES = [5, 30, 300, 3000] as const;
const MOST_GROWTH = 1.3;

export async function run(report: Report): Promise<void> {
  const ways = Object.fromEntries(SIZES.map((count) => [`${count}`, () => measured(spread(count))]));
  const times = interleave(ways, 3);
  const timeOf = (count: number): number => times[`${count}`] ?? Number.NaN;
  for (const [index, count] of SIZES.entries()) {
    report({ label: `${count} pieces`, value: timeOf(count), unit: 'ms' });
    const fewer = SIZES[index - 1];
    if (fewer === undefined) continue;
    report({
      label: `growth from ${fewer} to ${count}: exponent of n`,
      value: Math.log(timeOf(count) / timeOf(fewer)) / Math.log(count / fewer),
      unit: '',
      target: `at most ${MOST_GROWTH}`,
    });
  }
}

function measured(pieces: readonly LaidPiece[]): NonNullable<unknown> {
  const result = measureBuild({ kind: 'laid-out', pieces }, KINDS, OPTIONS);
  if (!result.ok) throw new Error('the build was refused');
  return result.value.facts;
}

/** Towers of brick, drum and tip in touching rows, every fifth place left free. */
function spread(count: number): readonly LaidPiece[] {
  const [columns, tower] = [Math.ceil(Math.sqrt(count / 3)), ['brick', 'drum', 'tip']];
  return Array.from({ length: count }, (_, index) => {
    const spot = Math.floor(index / 3);
    const [column, row] = [spot % columns, Math.floor(spot / columns)];
    return {
      kind: tower[index % 3] ?? 'brick',
      resting: 'base',
      xMm: 60 * (column + Math.floor(column / 4)),
      yMm: 60 * row,
      turnRad: 0,
    };
  });
}
