// Marks from 0 to 4, criterion by criterion, and yes/no rules, of all groups: for a judge who goes round.

import type { Group } from '@cairnmark/engine';
import { MARK_MOST } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { Choice } from '../../parts/choice.tsx';
import { withAnswer, withMark } from '../../store/class-changes.ts';
import { asName } from '../../store/plain-text.ts';
import type { SheetData } from './sheet.ts';
import { useRow } from './use-row.ts';

const MARKS = Array.from({ length: MARK_MOST + 1 }, (_, mark) => ({ id: String(mark), text: String(mark) }));

export function MarksTable({ sheet }: { readonly sheet: SheetData }) {
  const { say } = usePlanWords();
  const [missing, setMissing] = useState(false);
  const judge = asName(sheet.person.typed);
  return (
    <>
      <p role="status" className="oops">
        {missing && judge === '' ? say('record-sheet.who-missing') : ''}
      </p>
      <ul className="marks-list">
        {sheet.record.groups.map((group) => (
          <MarksRow key={group.id} sheet={sheet} group={group} judge={judge} nobody={() => setMissing(true)} />
        ))}
      </ul>
    </>
  );
}

function MarksRow({
  sheet,
  group,
  judge,
  nobody,
}: {
  readonly sheet: SheetData;
  readonly group: Group;
  readonly judge: string;
  readonly nobody: () => void;
}) {
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const { attempt, built, type } = useRow(sheet, group);
  const { challenge, words } = sheet;
  if (attempt === null || !built) {
    return (
      <li>
        <h2>{group.name}</h2>
        <p className="mut">{say('record-sheet.nothing-yet')}</p>
      </li>
    );
  }
  const mine = (criterion: string): number | null =>
    attempt.judged.find((one) => one.judge === judge && one.criterion === criterion)?.mark ?? null;
  return (
    <li>
      <h2>{group.name}</h2>
      <div className="marks-fields">
        {challenge.criteria.map(({ id, name }) => (
          <Choice
            key={id}
            label={name}
            options={MARKS}
            chosen={mine(id) === null ? null : String(mine(id))}
            choose={(mark) => (judge === '' ? nobody() : type(withMark({ judge, criterion: id, mark: Number(mark) })))}
          />
        ))}
        {challenge.requirements.map((rule) => {
          if (rule.kind !== 'judged') return null;
          const answer = attempt.answers[rule.id];
          return (
            <Choice
              key={rule.id}
              label={words.words.capital(words.inClass.ruleTitle(rule))}
              options={(['kept', 'broken'] as const).map((id) => ({ id, text: screen.say(`score-card.${id}`) }))}
              chosen={answer === undefined ? null : answer.kept ? 'kept' : 'broken'}
              choose={(kept) => type(withAnswer(rule.id, { ...answer, kept: kept === 'kept' }))}
            />
          );
        })}
      </div>
    </li>
  );
}
