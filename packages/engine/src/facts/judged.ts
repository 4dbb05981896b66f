// What judges marked from 0 to 4: for every criterion the mean of the marks given.

import type { ReportedFact } from '../report-types.ts';
import type { Criterion, Mark } from '../types.ts';
import { plainFact } from './fact.ts';
import { judgedFactId } from './ids.ts';

/** A fact for every criterion; not measured when nobody marked it. */
export function judgedFacts(criteria: readonly Criterion[], judged: readonly Mark[]): ReportedFact[] {
  return criteria.map(({ id }) => {
    const marks = judged.filter(({ criterion }) => criterion === id).map(({ mark }) => mark);
    const marked = marks.length > 0;
    const mean = marked ? marks.reduce((sum, mark) => sum + mark, 0) / marks.length : null;
    return plainFact(judgedFactId(id), mean, 'judged');
  });
}
