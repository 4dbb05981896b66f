// The challenges that a class begins with, each with a sentence. More can be added, and all changed, later.

import type { ReadyId } from '@cairnmark/engine';
import { READY_IDS } from '@cairnmark/engine';
import type { Words } from '@cairnmark/words';
import { usePlanWords } from '../../app/plan-words.ts';

export function FirstChallenges({
  words,
  chosen,
  missing,
  toggle,
}: {
  readonly words: Words;
  readonly chosen: ReadonlySet<ReadyId>;
  readonly missing: boolean;
  readonly toggle: (id: ReadyId) => void;
}) {
  const { say } = usePlanWords();
  return (
    <fieldset className="first-challenges">
      <legend>{say('class.first-challenges')}</legend>
      <p role="status" className="oops">
        {missing ? say('class.challenges-missing') : ''}
      </p>
      {READY_IDS.map((id) => (
        <label key={id} className="tick">
          <input type="checkbox" checked={chosen.has(id)} onChange={() => toggle(id)} />
          <span>
            <b>{words.names.ready[id]}</b>
            <span>{say(`class.ready-${id}`)}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
