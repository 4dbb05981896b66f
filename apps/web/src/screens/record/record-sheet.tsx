// The record sheet: all groups of a challenge as a table, for typing what was measured: at the builds, or after the lesson
// from paper. Judges give their marks on a table of their own.

import { useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';
import { useBuildWords } from '../../app/use-build-words.ts';
import { useMay } from '../../app/use-may.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { HelpArea, HelpButton } from '../../parts/asked-help.tsx';
import { Choice } from '../../parts/choice.tsx';
import { usePerson } from '../../parts/use-person.ts';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import { MarksTable } from './marks-table.tsx';
import { NumbersSheet } from './numbers-sheet.tsx';
import './record.css';
import { SheetHelp } from './sheet-help.tsx';
import { WhoAndHowMany } from './who-and-how-many.tsx';

export default planning(RecordSheet);

export type SheetView = 'numbers' | 'marks';

function RecordSheet({ at }: { readonly at: At }) {
  const { record, challenge } = at;
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const words = useBuildWords(challenge, record);
  const goTo = useSession((session) => session.goTo);
  const person = usePerson();
  const mayConfirm = useMay('confirm');
  const mayJudge = useMay('judge');
  const hasMarks = challenge.criteria.length > 0 || challenge.requirements.some(({ kind }) => kind === 'judged');
  const [chosen, setChosen] = useState<SheetView>('numbers');
  const view = !hasMarks ? 'numbers' : !mayConfirm ? 'marks' : !mayJudge ? 'numbers' : chosen;
  const sheet = { record, challenge, words, person };
  return (
    <HelpArea>
      <div className="page record-sheet">
        <div className="record-head">
          <h1>{say('record-sheet.title')}</h1>
          <HelpButton />
        </div>
        <div className="record-choices">
          <Choice
            label={screen.say('frame.challenge')}
            options={record.challenges.map(({ id, name }) => ({ id, text: name }))}
            chosen={challenge.id}
            choose={(id) => goTo({ challenge: id })}
          />
          {hasMarks && mayConfirm && mayJudge && (
            <Choice
              label={say('record-sheet.what')}
              options={(['numbers', 'marks'] as const).map((id) => ({ id, text: say(`record-sheet.${id}`) }))}
              chosen={view}
              choose={setChosen}
            />
          )}
        </div>
        <WhoAndHowMany sheet={sheet} view={view} />
        <SheetHelp view={view} />
        {view === 'numbers' && !mayConfirm && <p className="mut">{say('record-sheet.no-marks')}</p>}
        {view === 'marks' ? (
          <MarksTable sheet={sheet} />
        ) : (
          mayConfirm && <NumbersSheet key={challenge.id} sheet={sheet} />
        )}
      </div>
    </HelpArea>
  );
}
