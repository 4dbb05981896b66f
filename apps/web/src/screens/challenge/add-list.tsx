// The challenges that are ready to run, and an empty one. A tap adds it, with the kit of the challenge at work and rulers of
// its units.

import type { Challenge } from '@cairnmark/engine';
import { READY_IDS, readyChallengeFor } from '@cairnmark/engine';
import { addChallenge, nameTold, withOwnId } from '../../store/challenge-copies.ts';
import { emptyChallenge } from '../../store/empty-challenge.ts';
import { unitsOf } from '../../store/rule-settings.ts';
import { useSession } from '../../store/use-session.ts';
import { useForm } from './form.ts';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function AddList({ added }: { readonly added: (id: string) => void }) {
  const { at, challenge, words, inClass, say } = useForm();
  const { faults, makeInClass } = useMake();
  const goTo = useSession((session) => session.goTo);
  const { kit } = challenge;
  const told = (name: string): string =>
    nameTold(
      name,
      at.record.challenges.map((one) => one.name),
    );
  const ready = READY_IDS.map((id) =>
    readyChallengeFor(id, told(words.names.ready[id]), kit, null, { units: unitsOf(challenge) }),
  );
  const empty = emptyChallenge(told(say('challenge.new-name')), challenge);
  const add = (chosen: Challenge): void => {
    const fresh = withOwnId(at.record, chosen);
    if (!makeInClass(addChallenge(fresh, at.record.challenges.at(-1)?.id ?? ''))) return;
    goTo({ challenge: fresh.id });
    added(fresh.id);
  };
  return (
    <>
      <p className="mut">{say('challenge.add-with-kit', { kit: kit.name })}</p>
      <ul className="chal-ready">
        {ready.map((one) => (
          <li key={one.id}>
            <button type="button" className="btn" onClick={() => add(one)}>
              <b>{one.name}</b>
              <small>
                {[
                  words.names.grades[one.gradePreset],
                  inClass.order(one.ranking),
                  ...one.requirements.map((rule) => inClass.ruleTitle(rule)),
                ]
                  .map((text) => `${words.capital(text)}.`)
                  .join(' ')}
              </small>
            </button>
          </li>
        ))}
        <li>
          <button type="button" className="btn" onClick={() => add(empty)}>
            <b>{empty.name}</b>
            <small>{say('challenge.empty-what')}</small>
          </button>
        </li>
      </ul>
      <Told faults={faults} />
    </>
  );
}
