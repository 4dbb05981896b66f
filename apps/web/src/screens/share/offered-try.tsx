// A try that may come in: whose it is, what is different here, and the button that takes it in.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import type { FileIssue } from '@cairnmark/formats';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useWords } from '../../app/use-words.ts';
import { FAULTS_TOLD_MOST } from '../../parts/faults-told.ts';
import { useMoments } from '../../parts/use-moments.ts';
import { takeIn } from '../../store/bring-in-changes.ts';
import { useEdit } from '../../store/edit-class.ts';
import { useSession } from '../../store/use-session.ts';
import { GroupChoice } from './group-choice.tsx';
import type { Offer } from './offer.ts';
import { offerOf } from './offer.ts';
import type { Offered } from './read-offered.ts';
import { TrySentences } from './try-sentences.tsx';

export function OfferedTry({
  record,
  offered,
  show,
}: {
  readonly record: ClassRecord;
  readonly offered: Offered;
  readonly show: (attempt: Attempt) => void;
}) {
  const { say } = usePlanWords();
  const words = useWords();
  const moment = useMoments();
  const [groupId, setGroupId] = useState<string | null>(null);
  const role = useSession((session) => session.role);
  const { group, challenge, attempt, comes, staysOut, held, number, warnings } = offerOf(
    record,
    offered,
    groupId,
    role,
  );
  const named = { group: group?.name ?? attempt.group, challenge: challenge?.name ?? attempt.challenge };
  return (
    <>
      <p>
        <b>
          {group === null || challenge === null
            ? say('share.which-unknown', named)
            : say('share.which', { ...named, number })}
        </b>{' '}
        <span className="mut">{moment(attempt.at)}</span>
      </p>
      {challenge === null ? (
        <p className="badbox">
          {words.issue({ code: 'challenge-unknown', path: [], details: { challenge: attempt.challenge } })}
        </p>
      ) : (
        <>
          <TrySentences attempt={attempt} challenge={challenge} record={record} />
          {!record.groups.some(({ id }) => id === offered.attempt.group) && (
            <GroupChoice record={record} unknown={offered.attempt.group} chosen={groupId} choose={setGroupId} />
          )}
          {held.kind !== 'same' && comes.map((act) => <p key={act}>{say(`share.comes-${act}`)}</p>)}
          {held.kind !== 'same' && staysOut.length > 0 && <Note text={say('share.stays-out')} />}
          {held.kind !== 'same' && warnings.map((warning) => <Note key={warning} text={say(`share.${warning}`)} />)}
          {held.kind === 'other' && group !== null && <Note text={say('share.beside')} />}
          {group !== null && <TakeIn attempt={attempt} held={held} number={number} show={show} />}
        </>
      )}
    </>
  );
}

const Note = ({ text }: { readonly text: string }) => <p className="note">{text}</p>;

/** What is here already is told, and offers nothing but to be shown. */
function TakeIn({
  attempt,
  held,
  number,
  show,
}: Pick<Offer, 'attempt' | 'held' | 'number'> & { readonly show: (attempt: Attempt) => void }) {
  const { say } = usePlanWords();
  const words = useWords();
  const edit = useEdit();
  const [taken, setTaken] = useState(false);
  const [faults, setFaults] = useState<readonly FileIssue[]>([]);
  const shower = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    // The button that was pressed is gone.
    if (taken) shower.current?.focus();
  }, [taken]);
  const take = (): void => {
    const refused = edit(takeIn(attempt));
    setFaults(refused);
    setTaken(refused.length === 0);
  };
  return (
    <>
      <div role="status">
        {held.kind === 'same' && <p>{say(taken ? 'share.taken' : 'share.here', { number })}</p>}
        {faults.length > 0 && (
          <div className="badbox">
            <p>{say('share.refused')}</p>
            {faults.slice(0, FAULTS_TOLD_MOST).map((fault) => (
              <p key={fault.path.join()}>{words.issue(ofTry(fault))}</p>
            ))}
          </div>
        )}
      </div>
      {held.kind === 'same' ? (
        <button ref={shower} type="button" className="btn" onClick={() => show(held.attempt)}>
          {say('share.show')}
        </button>
      ) : (
        <button type="button" className="btn main" onClick={take}>
          {say('share.take')}
        </button>
      )}
    </>
  );
}

/** The place in the try: which one of the class it would be says nothing. */
const ofTry = (fault: FileIssue): FileIssue =>
  fault.path[0] === 'attempts' ? { ...fault, path: fault.path.slice(2) } : fault;
