// "Who would have won?": the class ranked as it was and by the points that are tried, side by side; and the copy of the
// challenge that keeps them.

import { pointsTable } from '@cairnmark/engine';
import type { FileIssue } from '@cairnmark/formats';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useScreenWords, useWords } from '../../app/use-words.ts';
import { useEdit } from '../../store/edit-class.ts';
import { useSession } from '../../store/use-session.ts';
import { useClassScore } from '../../workers/use-engine.ts';
import { useLab } from './lab.ts';
import { RankedTable } from './ranked-table.tsx';
import type { Retried } from './ranked-under.ts';
import { withPoints } from './ranked-under.ts';

export function WhoWon({ close }: { readonly close: () => void }) {
  const { say, at, kit, rates, counting } = useLab();
  const screen = useScreenWords();
  const heading = useRef<HTMLHeadingElement>(null);
  const { challenge } = at;
  const [kept, setKept] = useState<string | null>(null);
  // Of the class as it was when the copy was asked for: once it is kept, the copy is part of the class itself.
  const [asked, setAsked] = useState({ record: at.record, rates, counting });
  const retried = useMemo(
    () => withPoints(asked.record, challenge, pointsTable(kit.rows, asked.rates), asked.counting),
    [asked, challenge, kit.rows],
  );
  const record = useMemo(() => retried.add(asked.record), [retried, asked.record]);
  const { value: score, working, failed, issues } = useClassScore(record);
  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    if (kept === null) setAsked({ record: at.record, rates, counting });
  }, [kept, at.record, rates, counting]);
  return (
    <section className="fair-won" aria-labelledby="fair-won" aria-busy={working}>
      <div className="fair-head">
        <h2 id="fair-won" ref={heading} tabIndex={-1}>
          {say('lab.who-won')}
        </h2>
        <button type="button" className="btn" onClick={close}>
          {say('lab.close')}
        </button>
      </div>
      <p className="mut">{say('lab.who-won-lede', { challenge: challenge.name })}</p>
      {failed !== null && (
        <p className="badbox" role="alert">
          {say('lab.failed')}
        </p>
      )}
      <Faults issues={issues} />
      {score === null && failed === null && working && <p role="status">{screen.say('frame.loading')}</p>}
      {score !== null && <RankedTable score={score} record={record} before={challenge} after={retried.copy} />}
      <Keep retried={retried} kept={kept} keep={setKept} />
    </section>
  );
}

function Keep({
  retried: { copy, add },
  kept,
  keep,
}: {
  readonly retried: Retried;
  readonly kept: string | null;
  readonly keep: (id: string) => void;
}) {
  const { say, at } = useLab();
  const edit = useEdit();
  const showOnBoard = useSession((session) => session.showOnBoard);
  const [faults, setFaults] = useState<readonly FileIssue[]>([]);
  const { challenge } = at;
  if (kept !== null) {
    return (
      <p className="note fair-kept" role="status">
        {say('lab.kept', { name: copy.name, challenge: challenge.name })}{' '}
        <Link className="btn" href="/board" onClick={() => showOnBoard({ shown: kept, view: 'ranking', frozen: null })}>
          {say('lab.to-board')}
        </Link>
      </p>
    );
  }
  const make = (): void => {
    const found = edit(add);
    setFaults(found);
    if (found.length === 0) keep(copy.id);
  };
  return (
    <div className="fair-keep">
      <p>{say('lab.keep-what', { challenge: challenge.name })}</p>
      <button type="button" className="btn main" onClick={make}>
        {say('lab.keep')}
      </button>
      <Faults issues={faults} />
    </div>
  );
}

function Faults({ issues }: { readonly issues: readonly Parameters<ReturnType<typeof useWords>['issue']>[0][] }) {
  const words = useWords();
  if (issues.length === 0) return null;
  return (
    <ul className="badbox" role="alert">
      {issues.map((issue) => (
        <li key={words.issue(issue)}>{words.issue(issue)}</li>
      ))}
    </ul>
  );
}
