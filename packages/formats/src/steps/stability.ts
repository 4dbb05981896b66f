// Version 2: whether a build stands. Kits name surfaces and may state frictions of pairs, challenges state the slack,
// pieces may be held or weighed, reports say whether the build stands.

import type { Content, Step } from '../steps.ts';
import { eachOf, isObject } from './content.ts';

export const STABILITY_STEPS: readonly Step[] = [
  { format: 'kit', from: 1, name: 'surfaces-and-frictions', up: kitUp },
  { format: 'challenge', from: 1, name: 'slack', up: challengeUp },
  // Files of version 1 have no such piece.
  { format: 'attempt', from: 1, name: 'held-or-weighed-pieces', up: (content) => content },
  {
    format: 'class',
    from: 1,
    name: 'slack-of-each-challenge',
    up: (content) => ({ ...content, challenges: eachOf(content['challenges'], challengeUp) }),
  },
  // What was not judged then is not judged now: a report is kept as it was made.
  {
    format: 'report',
    from: 1,
    name: 'stability',
    up: (content) => ({ stability: null, ...content }),
  },
];

function kitUp(content: Content): Content {
  return { frictions: [], ...content, kinds: eachOf(content['kinds'], kindUp) };
}

function kindUp(kind: Content): Content {
  const { material } = kind;
  return { surface: isObject(material) && material['kind'] === 'folded-paper' ? 'paper' : 'solid', ...kind };
}

function challengeUp(content: Content): Content {
  const { kit } = content;
  return { slackMm: SLACK_OF_PAPER_MM, ...content, ...(isObject(kit) ? { kit: kitUp(kit) } : {}) };
}

/** mm. What folded paper solids give way: common practice, no source. */
const SLACK_OF_PAPER_MM = 2;
