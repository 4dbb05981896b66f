// What the search for points that favour a solid came to: the rules, the smallest first, or why there is none.

import { labKindName, leadText } from '@cairnmark/words';
import type { FairQuestions } from '../../workers/fair-questions.ts';
import { useLab } from './lab.ts';
import type { Wish } from './task.ts';
import { TriedRule } from './tried-rule.tsx';
import { WhyNot } from './why-not.tsx';

interface FoundOf {
  readonly wish: Wish;
  readonly answer: FairQuestions['favour']['answer'];
  /** Ids of the rows that the search was for, in their order. */
  readonly rows: readonly string[];
}

export function Found({ wish, answer: { favouring, offers }, rows }: FoundOf) {
  const lab = useLab();
  const { say } = lab;
  const solid = labKindName(wish.favourite, lab);
  if (favouring.status === 'not-settled') return <p className="note">{say('lab.stopped')}</p>;
  if (favouring.status === 'impossible') return <WhyNot wish={wish} why={favouring.why} offers={offers} rows={rows} />;
  const { rules, complete } = favouring;
  return (
    <div className="note fair-found">
      <p>
        <b>
          {rules.length === 1 && complete
            ? say('lab.found-one', { solid })
            : say(complete ? 'lab.found-several' : 'lab.found-more', { solid, count: rules.length })}
        </b>
      </p>
      <ol>
        {rules.map((rule) => (
          <li key={rule.rates.join()}>
            <TriedRule rule={rule} rows={rows}>
              {leadText(rule, wish.favourite, lab)}
            </TriedRule>
          </li>
        ))}
      </ol>
    </div>
  );
}
