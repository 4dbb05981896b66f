// Who is at work: group, challenge and try, with a dialog to change them.

import { useRef } from 'preact/hooks';
import { HelpArea, HelpButton, HelpList } from '../parts/asked-help.tsx';
import { Choice } from '../parts/choice.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { useAt, useSession } from '../store/use-session.ts';
import type { At } from '../store/where-at.ts';
import { useScreenWords } from './use-words.ts';

export function Who() {
  const words = useScreenWords();
  const at = useAt();
  const dialog = useRef<HTMLDialogElement>(null);
  if (at === null) return null;
  const number = at.attempt === null ? at.tries.length + 1 : at.tries.indexOf(at.attempt) + 1;
  return (
    <>
      <button type="button" className="btn bare who-now" onClick={() => dialog.current?.showModal()}>
        <b>{words.say('frame.try', { group: at.group.name, number })}</b>
        <span className="vh">{words.say('frame.change-group')}</span>
      </button>
      <Dialog dialog={dialog} title={words.say('frame.change-group')}>
        <HelpArea>
          <Places at={at} />
        </HelpArea>
      </Dialog>
    </>
  );
}

function Places({ at }: { readonly at: At }) {
  const words = useScreenWords();
  const goTo = useSession((session) => session.goTo);
  const startTry = useSession((session) => session.startTry);
  return (
    <div className="places">
      <Choice
        label={words.say('frame.group')}
        options={at.record.groups.map(({ id, name }) => ({ id, text: name }))}
        chosen={at.group.id}
        choose={(group) => goTo({ group })}
      />
      <Choice
        label={words.say('frame.challenge')}
        options={at.record.challenges.map(({ id, name }) => ({ id, text: name }))}
        chosen={at.challenge.id}
        choose={(challenge) => goTo({ challenge })}
      />
      {at.tries.length > 0 && (
        <Choice
          label={words.say('frame.attempt')}
          options={at.tries.map(({ id }, k) => ({ id, text: String(k + 1) }))}
          chosen={at.attempt?.id ?? null}
          choose={(attempt) => goTo({ attempt })}
        />
      )}
      <button type="button" className="btn" onClick={() => startTry()}>
        {words.say('frame.new-try')}
      </button>
      <HelpButton />
      <HelpList
        items={[
          ['help.group', words.say('frame.group')],
          ['help.challenge', words.say('frame.challenge')],
          ['help.attempt', words.say('frame.attempt')],
          ['help.new-try', words.say('frame.new-try')],
        ]}
      />
    </div>
  );
}
