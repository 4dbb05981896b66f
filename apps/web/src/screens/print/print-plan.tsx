// The Print screen: the paper side of a lesson, chosen from a list, counted, looked at, saved as a PDF or printed.

import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';
import { useBuildWords } from '../../app/use-build-words.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { HelpArea, HelpButton } from '../../parts/asked-help.tsx';
import { Choice } from '../../parts/choice.tsx';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import { MakePdf } from './make-pdf.tsx';
import { NetsRow } from './nets-row.tsx';
import { PaperFields } from './paper-fields.tsx';
import { Preview } from './preview.tsx';
import './print.css';
import { PrintHelp } from './print-help.tsx';
import { SheetList } from './sheet-list.tsx';
import { usePrinting } from './use-printing.ts';

export default planning(PrintPlan);

function PrintPlan({ at }: { readonly at: At }) {
  const { record, challenge } = at;
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const { words, ruler } = useBuildWords(challenge, record);
  const goTo = useSession((session) => session.goTo);
  const printing = usePrinting(at, ruler);
  // Which page is looked at, of all that are chosen; beyond the last one it is the last.
  const [page, setPage] = useState(0);
  return (
    <HelpArea>
      <div className="page print-plan" aria-busy={printing.nets.working || printing.sheets.working}>
        <div className="print-head">
          <div>
            <h1>{say('printing.title')}</h1>
            <p className="lede">{say('printing.lede')}</p>
          </div>
          <div className="print-do">
            <HelpButton />
            <MakePdf printing={printing} record={record} />
          </div>
        </div>
        <div className="print-parts">
          <PrintHelp />
          <Choice
            label={screen.say('frame.challenge')}
            options={record.challenges.map(({ id, name }) => ({ id, text: name }))}
            chosen={challenge.id}
            choose={(id) => goTo({ challenge: id })}
          />
          <PaperFields printing={printing} ruler={ruler} />
          <NetsRow printing={printing} ruler={ruler} />
          <SheetList printing={printing} />
          <p>
            {say('printing.bar-off')} <Link href="/kit">{screen.say('tab.kit')}</Link>
          </p>
          <p className="warnbox">
            {words.cautions.cutting} {words.cautions['hot-glue']} {words.cautions['school-rules']}
          </p>
        </div>
        <Preview printing={printing} page={page} turnTo={setPage} />
      </div>
    </HelpArea>
  );
}
