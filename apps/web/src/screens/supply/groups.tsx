// Whose list it is: all groups, one tap each.

import { usePlanWords } from '../../app/plan-words.ts';
import { Choice } from '../../parts/choice.tsx';
import type { At } from '../../store/where-at.ts';

export function Groups({ at, choose }: { readonly at: At; readonly choose: (group: string) => void }) {
  const { say } = usePlanWords();
  return (
    <div className="supply-groups">
      <Choice
        label={say('supply-game.group')}
        hideLabel
        options={at.record.groups.map(({ id, name }) => ({ id, text: name }))}
        chosen={at.group.id}
        choose={choose}
      />
    </div>
  );
}
