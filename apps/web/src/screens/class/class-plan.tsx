// The class: its groups, and what may be done with it as a whole.

import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';

export default planning(ClassPlan);

function ClassPlan() {
  const { say } = usePlanWords();
  return (
    <div className="page">
      <h1>{say('class.title')}</h1>
    </div>
  );
}
