// Which sheet lies under the build, and on which paper: lengths are reckoned from it.

import type { PaperId } from '@cairnmark/photo';
import { Choice } from '../../parts/choice.tsx';
import { useTraceWords } from './trace-words.ts';
import type { SheetChoice } from './tracing.ts';

const SHEETS = ['ground', 'fort', 'plain'] as const;
const PAPERS: readonly PaperId[] = ['a4', 'letter'];

export function SheetChoices({
  sheet,
  choose,
}: {
  readonly sheet: SheetChoice;
  readonly choose: (sheet: SheetChoice) => void;
}) {
  const { say } = useTraceWords();
  return (
    <>
      <label>
        {say('trace.sheet')}
        <select
          className="in"
          value={sheet.what}
          onChange={({ currentTarget: { value } }) =>
            choose({ ...sheet, what: SHEETS.find((id) => id === value) ?? sheet.what })
          }
        >
          {SHEETS.map((id) => (
            <option key={id} value={id}>
              {say(`trace.sheet-${id}`)}
            </option>
          ))}
        </select>
      </label>
      <Choice
        label={say('trace.paper')}
        options={PAPERS.map((id) => ({ id, text: say(`trace.paper-${id}`) }))}
        chosen={sheet.paper}
        choose={(paper) => choose({ ...sheet, paper })}
      />
    </>
  );
}
