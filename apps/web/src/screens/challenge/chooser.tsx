// The challenges of the class, which one is at work, and a further one.

import { useRef } from 'preact/hooks';
import { HelpButton } from '../../parts/asked-help.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useSession } from '../../store/use-session.ts';
import { AddList } from './add-list.tsx';
import { useForm } from './form.ts';

export function Chooser({ arrive }: { readonly arrive: (id: string) => void }) {
  const { at, challenge, say } = useForm();
  const goTo = useSession((session) => session.goTo);
  const dialog = useRef<HTMLDialogElement>(null);
  return (
    <div className="chal-top">
      <Choice
        label={say('challenge.which')}
        hideLabel
        options={at.record.challenges.map(({ id, name }) => ({ id, text: name }))}
        chosen={challenge.id}
        choose={(id) => goTo({ challenge: id })}
      />
      <button type="button" className="btn bare" onClick={() => dialog.current?.showModal()}>
        <Icon name="plus" />
        {say('challenge.add')}
      </button>
      <HelpButton />
      <Dialog dialog={dialog} title={say('challenge.add')}>
        <AddList
          added={(id) => {
            dialog.current?.close();
            arrive(id);
          }}
        />
      </Dialog>
    </div>
  );
}
