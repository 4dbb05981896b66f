// The score card: what one try measures, which rules it keeps, what it earns, and how all of it comes about.

import { useMemo } from 'preact/hooks';
import { useCardWords, withCardWords } from '../../app/card-words.tsx';
import { useBuildWords } from '../../app/use-build-words.ts';
import { NoClass } from '../../parts/no-class.tsx';
import { useAt } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import { buildOf, useReport } from '../../workers/use-engine.ts';
import { billOf } from './bill.ts';
import type { Card } from './card.ts';
import { CardContext } from './card.ts';
import { scoreLines } from './lines.ts';
import { NoTry } from './no-try.tsx';
import { PrintCard } from './print-card.tsx';
import './score.css';
import { usePerson } from '../../parts/use-person.ts';
import { Sheet } from './sheet.tsx';
import { useOursFirst } from './use-ours-first.ts';
import { usePlaces } from './use-places.ts';
import { Refused, Working } from './working-it-out.tsx';

export default withCardWords(ScoreCard);

function ScoreCard() {
  const at = useAt();
  if (at === null) return <NoClass />;
  const { attempt } = at;
  return attempt === null ? <NoTry at={at} /> : <Scored key={attempt.id} at={{ ...at, attempt }} />;
}

function Scored({ at }: { readonly at: Card['at'] }) {
  const { say } = useCardWords();
  const buildWords = useBuildWords(at.challenge, at.record);
  const person = usePerson();
  const answer = useReport(useBuild(at));
  const { reports, working, standing } = usePlaces(at);
  const report = answer.value?.attempt === at.attempt.id ? answer.value : null;
  const covering = useOursFirst(at, report);
  if (answer.issues.length > 0) return <Refused issues={answer.issues} words={buildWords.words} />;
  if (report === null || covering === null) return <Working at={at} worked={answer} />;
  const lines = scoreLines(report, at.challenge);
  const card: Card = {
    ...buildWords,
    say,
    at,
    number: at.tries.indexOf(at.attempt) + 1,
    report,
    lines,
    bill: billOf(report, lines),
    reports,
    placing: working,
    person,
    covering,
  };
  return (
    <CardContext value={card}>
      <Sheet standing={standing} worked={answer} />
      <PrintCard standing={standing} />
    </CardContext>
  );
}

/** The same object while nothing of the build changed, so that it is asked about once: of the class, only the supply counts. */
function useBuild(at: At) {
  const { attempt, challenge, group, record } = at;
  const events = record.supplies[challenge.id];
  return useMemo(() => buildOf(at), [attempt, challenge, group, events]);
}
