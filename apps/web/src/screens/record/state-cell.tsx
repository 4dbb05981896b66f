// How the build of a group ended, chosen from a list.

import type { AttemptState, Group } from '@cairnmark/engine';
import { usePlanWords } from '../../app/plan-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { withState } from '../../store/observed-changes.ts';
import type { Row } from './use-row.ts';

const STATES: readonly AttemptState['kind'][] = ['stood', 'fell-before-measuring', 'fell', 'not-taking-part', 'absent'];

export function StateCell({ row, group }: { readonly row: Row; readonly group: Group }) {
  const { say } = usePlanWords();
  const screen = useScreenWords();
  return (
    <select
      className="in"
      aria-label={say('record-sheet.state-of', { group: group.name })}
      value={row.attempt?.state.kind ?? ''}
      onChange={({ currentTarget }) => {
        const kind = STATES.find((one) => one === currentTarget.value);
        if (kind !== undefined) row.type(withState(kind));
      }}
    >
      {row.attempt === null && <option value="">–</option>}
      {STATES.map((kind) => (
        <option key={kind} value={kind}>
          {screen.say(`score-card.state-${kind}`)}
        </option>
      ))}
    </select>
  );
}
