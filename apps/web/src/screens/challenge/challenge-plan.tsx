// The challenge: what earns points, what a build must keep to, and all other rules.

import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';

export default planning(ChallengePlan);

function ChallengePlan() {
  const { say } = usePlanWords();
  return (
    <div className="page">
      <h1>{say('challenge.title')}</h1>
    </div>
  );
}
