// How near this build comes to the best possible one, where the challenge says that groups are told: a part of the whole, from
// the pieces and sizes of the group.

import { nearBest, supplyOf } from '@cairnmark/engine';
import { useEffect } from 'preact/hooks';
import { useTalkWords } from '../../app/talk-words.tsx';
import { useBest } from '../../workers/use-best.ts';
import { useCard } from './card.ts';

export default function NearBest() {
  const { at, report, words, inClass } = useCard();
  const { say } = useTalkWords();
  const { challenge, group, record } = at;
  const events = record.supplies[challenge.id];
  const { search, ask } = useBest();
  useEffect(() => {
    const earned = supplyOf(events ?? [], challenge, group)?.pieces ?? null;
    ask({ challenge, whose: { group, earned }, front: false });
  }, [ask, challenge, group, events]);
  if (search.kind === 'working') return <p className="mut">{say('best.percent-working')}</p>;
  const { plan, answer } = search.kind === 'found' ? search.found : { plan: null, answer: null };
  if (plan === null || answer === null) return null;
  const near = nearBest(report, plan, answer);
  if (near === null) return null;
  const { percent, over } = near;
  const about = near.about && percent !== 100 ? '-about' : '';
  const { goal } = plan.task;
  // Points of the rows that were looked at alone: courtyards and marks of judges are beyond any search.
  const told =
    goal.kind === 'most-points'
      ? say(`best.percent-points${about}`, {
          percent,
          measures: words.listed([...new Set(goal.rows.map(({ measure }) => inClass.label(measure)))]),
        })
      : say(`best.percent${about}`, { percent });
  return (
    <p className="card-near" role="status">
      {told} {over && say('best.percent-over')}
    </p>
  );
}
