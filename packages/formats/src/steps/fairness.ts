// Version 3: what makes a result fair to defend. Challenges say what a fallen build counts, how own results are looked at,
// whether pieces are earned, what is hidden and which labels they bear; answers may have a note; groups hand in own
// results; classes keep supply lists; reports hold all of it, and which errors builds share.

import type { Content, Step } from '../steps.ts';
import { eachOf, everyValue, isObject } from './content.ts';

export const FAIRNESS_STEPS: readonly Step[] = [
  { format: 'challenge', from: 2, name: 'fallen-own-supply-labels', up: challengeUp },
  { format: 'attempt', from: 2, name: 'notes-and-own-results', up: attemptUp },
  {
    format: 'class',
    from: 2,
    name: 'supply-lists',
    up: (content) => ({
      supplies: {},
      ...content,
      challenges: eachOf(content['challenges'], challengeUp),
      attempts: eachOf(content['attempts'], attemptUp),
    }),
  },
  { format: 'report', from: 2, name: 'own-supply-errors', up: reportUp },
];

/** A build that fell was out, and pupils' own results were not looked at: 5 % is where a class starts. */
function challengeUp(content: Content): Content {
  const own = { pi: 'key', closeShare: 0.05, rewards: [] };
  return { fallen: { counts: 'out' }, own, supply: null, hidden: [], labels: [], ...content };
}

function attemptUp(content: Content): Content {
  const answers = everyValue(content['answers'], (kept) => (typeof kept === 'boolean' ? { kept } : kept));
  return { own: [], ...content, ...(content['answers'] === undefined ? {} : { answers }) };
}

function reportUp(content: Content): Content {
  return {
    own: [],
    supply: null,
    ...content,
    facts: eachOf(content['facts'], factUp),
    requirements: eachOf(content['requirements'], (line) => ({ breaches: [], note: null, ...line })),
  };
}

/** Which readings an error came from was not kept then: nothing is said to be shared. */
function factUp(fact: Content): Content {
  const { predicted } = fact;
  const isMeasured = isObject(predicted) && predicted['status'] === 'measured';
  return { errors: {}, ...fact, ...(isMeasured ? { predicted: { errors: {}, ...predicted } } : {}) };
}
