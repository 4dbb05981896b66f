// Measures that are one measure divided by another. Where a ruler or a person gave the value that counts of one of them,
// the ratio is that of the values that count: a tower is as slender as it is high, not as its drawing is.

import type { MeasureId } from '@cairnmark/geometry';
import type { ReportedFact } from '../report-types.ts';

/** The facts, in their order, with every ratio made of the values that count; a ratio that a person decided stays. */
export function withCountingRatios(facts: readonly ReportedFact[]): ReportedFact[] {
  return facts.map((fact) => {
    const [over, under] = (RATIOS[fact.id] ?? []).map((part) => facts.find(({ id }) => id === part));
    if (over === undefined || under === undefined || fact.decided !== null) return fact;
    return over.source === 'predicted' && under.source === 'predicted' ? fact : ratioOf(fact, over, under);
  });
}

const RATIOS: Readonly<Record<string, readonly [over: MeasureId, under: MeasureId]>> = {
  'height-to-width': ['height', 'base-width'],
  'volume-per-paper': ['volume', 'paper'],
  'area-to-perimeter': ['footprint-area', 'footprint-perimeter'],
};

/**
 * Errors of a quotient q = a / b: each reading is off in both alike, (da - q db) / b; what is each one's own adds in
 * quadrature (JCGM 100:2008, 5.1.2 and 5.2.2; from memory). Not measured where either is not, or where b is 0.
 */
function ratioOf(fact: ReportedFact, over: ReportedFact, under: ReportedFact): ReportedFact {
  const [a, b] = [over.value, under.value];
  if (a === null || b === null || b === 0) return { ...fact, value: null, tolerance: 0, errors: {}, source: null };
  const readings = new Set([...Object.keys(over.errors), ...Object.keys(under.errors)]);
  const errors = Object.fromEntries(
    [...readings].map((reading) => [
      reading,
      ((over.errors[reading] ?? 0) - (a / b) * (under.errors[reading] ?? 0)) / b,
    ]),
  );
  const own = Math.hypot(ownError(over), (a / b) * ownError(under)) / b;
  const source = over.source === 'decided' || under.source === 'decided' ? 'decided' : 'observed';
  return { ...fact, value: a / b, tolerance: Math.hypot(own, ...Object.values(errors)), errors, source };
}

const ownError = ({ tolerance, errors }: ReportedFact): number =>
  Math.sqrt(Math.max(0, tolerance ** 2 - Object.values(errors).reduce((sum, error) => sum + error ** 2, 0)));
