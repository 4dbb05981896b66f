// Version 4 of reports: points that are not known have no number, and own results say what they were held against.

import type { Content, Step } from '../steps.ts';
import { eachOf } from './content.ts';

export const OPEN_RESULT_STEPS: readonly Step[] = [
  // Rows that could not be measured gave 0 then: a report is kept as it was made.
  {
    format: 'report',
    from: 3,
    name: 'unknown-points-and-own-sources',
    up: (content) => ({ ...content, own: eachOf(content['own'], ownLineUp) }),
  },
];

/** Own results were held against what was worked out from the drawing alone. */
function ownLineUp(line: Content): Content {
  return { source: line['expected'] === null ? null : 'predicted', ...line };
}
