// The supply game: what each group has earned, by strokes.

import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';

export default planning(SupplyGame);

function SupplyGame() {
  const { say } = usePlanWords();
  return (
    <div className="page">
      <h1>{say('supply-game.title')}</h1>
    </div>
  );
}
