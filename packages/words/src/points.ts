// Points row by row: the amount, the rate, the product. "12 faces × 2 points = 24 points".

import type { PointsLine, PointsRow } from '@cairnmark/scoring';
import { amount, amountApart, capital, counted, exactAmount, isCounted, isJudged, measureName } from './amounts.ts';
import { trimmed } from './numbers.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

/** One line of the points table. `tolerance` is that of the measured value. */
export function pointsSentence(line: PointsLine, row: PointsRow, tolerance: number, voice: Voice): string {
  const { words } = voice;
  const { results } = words;
  const measure = capital(measureName(row.measure, voice));
  if (line.points === null) return fill(results['points.not-known'], { measure });
  const total = counted('points', line.points, words);
  if (line.value === null || line.times === null) return fill(results['points.not-measured'], { measure, total });
  if (line.limited === null) return product(line.value, line.times, total, row, tolerance, voice);
  const free = counted('points', line.times * row.points, words);
  const unlimited = product(line.value, line.times, free, row, tolerance, voice);
  return fill(results[`points.${line.limited}`], { line: unlimited, limit: total });
}

function product(value: number, times: number, total: string, row: PointsRow, tolerance: number, voice: Voice): string {
  const { words } = voice;
  const { results, names, decimalMark } = words;
  const each = counted('points', row.points, words);
  const shown = onItsSide(value, row, tolerance, voice);
  const named = isCounted(row.measure, words);
  if (named && row.per === 1) return fill(results['points.line'], { amount: shown, each, total });
  const measure = capital(measureName(row.measure, voice));
  const subject = named ? shown : fill(results.subject, { measure, value: shown });
  if (isJudged(row.measure) && row.per === 1) {
    return fill(results['points.marks'], { subject, times: trimmed(times, 0, 3, decimalMark), each, total });
  }
  return fill(results['points.measured'], {
    subject,
    each,
    per: exactAmount(row.measure, row.per, voice),
    rounding: names.rounding[row.rounding],
    times: trimmed(times, 0, 3, decimalMark),
    total,
  });
}

/** The value as read; in full where reading it would carry it over the step at which the row gives more. */
function onItsSide(value: number, { measure, per, rounding }: PointsRow, tolerance: number, voice: Voice): string {
  const read = amount(measure, value, tolerance, voice);
  if (rounding === 'none') return read;
  const shift = rounding === 'nearest' ? 1 / 2 : 0;
  const step = (Math.round(value / per - shift) + shift) * per;
  const isOver = rounding === 'up' ? value > step : value < step;
  return isOver ? amountApart(measure, value, step, tolerance, voice) : read;
}
