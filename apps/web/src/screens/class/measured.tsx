// Who is measured in each challenge, and who not yet.

import type { ClassRecord } from '@cairnmark/engine';
import { Link } from 'wouter-preact';
import { usePlanWords } from '../../app/plan-words.ts';
import { useWords } from '../../app/use-words.ts';
import { measuredIn } from '../../store/measured-in.ts';
import { useSession } from '../../store/use-session.ts';

export function Measured({ record }: { readonly record: ClassRecord }) {
  const { say } = usePlanWords();
  const { listed } = useWords();
  const goTo = useSession((session) => session.goTo);
  return (
    <section className="sec">
      <h2>{say('class.measured')}</h2>
      <ul className="class-measured">
        {record.challenges.map((challenge) => {
          const { measured, notYet } = measuredIn(record, challenge.id);
          return (
            <li key={challenge.id}>
              <Link href="/record" onClick={() => goTo({ challenge: challenge.id })}>
                {challenge.name}
              </Link>
              <span>{say('class.measured-of', { measured: measured.length, of: record.groups.length })}</span>
              {notYet.length > 0 && measured.length > 0 && (
                <small className="mut">
                  {say('class.not-yet', { groups: listed(notYet.map(({ name }) => name)) })}
                </small>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
