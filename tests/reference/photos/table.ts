// How near traced towers come to their truth, as a table: by how far the taps are off.

import type { Traced, Views } from './accuracy.ts';
import { quantile } from './accuracy.ts';
import type { MeasuredBoard } from './chessboards.ts';

/** One line a noise of the taps; shares in per cent, lengths in mm. */
export function tableOf(
  runs: readonly { readonly sigmaPx: number; readonly tries: number; readonly traced: readonly Traced[] }[],
): string {
  const heads = ['taps off by', ...MEASURES.map(([name]) => name), 'refused'];
  const rows = runs.map(({ sigmaPx, tries, traced }) => [
    `${sigmaPx} px`,
    ...MEASURES.map(([, of, digits]) => {
      const values = traced.flatMap(of);
      return [0.5, 0.95, 1].map((share) => quantile(values, share).toFixed(digits)).join(' / ');
    }),
    `${tries - traced.length} of ${tries}`,
  ]);
  return aligned([heads, ...rows]);
}

const MEASURES: readonly (readonly [name: string, of: (one: Traced) => readonly number[], digits: number])[] = [
  ['area, %', ({ areaOff }) => [100 * areaOff], 2],
  ['place, mm', ({ spotsOffMm }) => spotsOffMm, 2],
  ['corner, mm', ({ cornersOffMm }) => cornersOffMm, 2],
  ['height, mm', ({ heightOffMm }) => [heightOffMm], 1],
];

/** What the photos say of their focal lengths, %. */
export function focalTable(views: readonly Views[]): string {
  const rows = (['top', 'side'] as const).map((which) => {
    const off = views.map((view) => 100 * (view[which].camera.focalPx / view.tower.lens[which].focalPx - 1));
    const tilts = views.map((view) => (view.tower.lens[which].tiltRad * 180) / Math.PI);
    return [
      which === 'top' ? 'from above' : 'from the side',
      `${Math.min(...tilts).toFixed(0)} to ${Math.max(...tilts).toFixed(0)}`,
      [0.5, 0.95, 1].map((share) => quantile(off, share).toFixed(2)).join(' / '),
    ];
  });
  return aligned([['photos', 'tilt, degrees', 'focal length, %'], ...rows]);
}

/** Lengths on real photographs of chessboards, %, by the camera that took them. */
export function boardTable(boards: readonly MeasuredBoard[]): string {
  const rows = ['left', 'right'].map((side) => {
    const own = boards.filter(({ name }) => name.startsWith(side));
    const middle = (of: (board: MeasuredBoard) => number): number =>
      own.map(of).sort((a, b) => a - b)[own.length >> 1]!;
    const off = own.flatMap(({ lengthsOff }) => lengthsOff.map((share) => 100 * share));
    return [
      `chessboards, ${side}`,
      `${own.length}`,
      `${off.length}`,
      [0.5, 0.95, 1].map((share) => quantile(off, share).toFixed(2)).join(' / '),
      middle(({ camera }) => camera.focalPx).toFixed(0),
      middle(({ camera }) => camera.k1).toFixed(2),
    ];
  });
  return aligned([['real photos', 'photos', 'lengths', 'off, %', 'focal length, px', 'k1'], ...rows]);
}

function aligned(rows: readonly (readonly string[])[]): string {
  const widths = rows[0]!.map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
  return rows
    .map((row) => row.map((cell, k) => (k === 0 ? cell.padEnd(widths[k]!) : cell.padStart(widths[k]! + 2))).join(''))
    .join('\n');
}
