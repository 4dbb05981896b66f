// The record sheet: all groups of a challenge as a table, for typing.

import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';

export default planning(RecordSheet);

function RecordSheet() {
  const { say } = usePlanWords();
  return (
    <div className="page">
      <h1>{say('record-sheet.title')}</h1>
    </div>
  );
}
