// The kit: kinds of piece, their sizes, how many there are.

import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';

export default planning(KitPlan);

function KitPlan() {
  const { say } = usePlanWords();
  return (
    <div className="page">
      <h1>{say('kit.title')}</h1>
    </div>
  );
}
