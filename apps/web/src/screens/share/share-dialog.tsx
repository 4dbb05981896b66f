// The ways out of this device and in, for one try: a code on the screen, a file, and what others bring.

import { useLayoutEffect, useRef } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';
import { HelpArea, HelpButton, HelpTexts } from '../../parts/asked-help.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import { BringIn } from './bring-in.tsx';
import './share.css';
import { isLaidOut, WayOut } from './way-out.tsx';

export default planning(ShareDialog);

function ShareDialog({ at }: { readonly at: At }) {
  const { say } = usePlanWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const goTo = useSession((session) => session.goTo);
  const hasModel = at.attempt !== null && isLaidOut(at.attempt);
  useLayoutEffect(() => dialog.current?.showModal(), []);
  return (
    <Dialog dialog={dialog} title={say('share.title')}>
      <HelpArea>
        <div className="share">
          {at.attempt !== null && <WayOut at={{ ...at, attempt: at.attempt }} />}
          <section className="share-bring">
            <h3>{say('share.bring')}</h3>
            <BringIn
              record={at.record}
              show={({ group, challenge, id }) => {
                dialog.current?.close();
                goTo({ group, challenge, attempt: id });
              }}
            />
          </section>
          <div>
            <HelpButton />
            <HelpTexts
              items={[
                [say('share.help-save'), say('share.save')],
                ...(hasModel ? [[say('model.help'), say('model.save')] as const] : []),
                [say('share.help-choose'), say('share.choose')],
                [say('share.help-take'), say('share.take')],
              ]}
            />
          </div>
        </div>
      </HelpArea>
    </Dialog>
  );
}
