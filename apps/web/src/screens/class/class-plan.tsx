// The class: its groups, who is measured, who holds the device, and what may be done with the class as a whole.

import type { Attempt } from '@cairnmark/engine';
import { useLocation } from 'wouter-preact';
import { usePlanWords } from '../../app/plan-words.ts';
import { planning } from '../../app/planning.tsx';
import { SaveClass } from '../../app/save-class.tsx';
import { useScreenWords, useWords } from '../../app/use-words.ts';
import { HelpArea, HelpButton, HelpTexts } from '../../parts/asked-help.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useEdit } from '../../store/edit-class.ts';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import './class.css';
import { BringIn } from '../share/bring-in.tsx';
import { CopyClass } from './copy-class.tsx';
import { DeleteClass } from './delete-class.tsx';
import { Groups } from './groups.tsx';
import { Holder } from './holder.tsx';
import { Measured } from './measured.tsx';

export default planning(ClassPlan);

function ClassPlan({ at: { record } }: { readonly at: At }) {
  const goTo = useSession((session) => session.goTo);
  // What stands here of a try or a PIN is of one class: a copy of it begins without.
  const classId = useSession(({ place }) => place?.classId ?? '');
  const [, navigate] = useLocation();
  const { say } = usePlanWords();
  const screen = useScreenWords();
  const { issue } = useWords();
  const edit = useEdit();
  const show = ({ group, challenge, id }: Attempt): void => {
    goTo({ group, challenge, attempt: id });
    navigate('/score');
  };
  return (
    <HelpArea>
      <div className="page class-plan">
        <div className="class-head">
          <h1>
            <span className="vh">{say('class.title')}: </span>
            {record.name}
          </h1>
          {record.invented && <p className="mut">{screen.say('frame.invented')}</p>}
          <HelpButton />
        </div>
        <HelpTexts
          items={[
            [say('class.help-rename'), say('class.group-name')],
            [say('class.help-late'), say('class.late'), say('class.add')],
            [say('class.help-join'), say('class.join')],
            [say('class.help-take-out'), say('class.take-out')],
            [say('class.help-bring-in'), say('class.bring-in')],
            [say('class.help-holder'), say('class.holder')],
            [say('class.help-copy'), say('class.copy')],
            [say('class.help-delete'), say('class.delete')],
          ]}
        />
        <div className="class-columns">
          <Groups record={record} />
          <div className="class-side">
            <Measured record={record} />
            <section className="sec">
              <h2>{say('class.bring-in')}</h2>
              <BringIn key={classId} record={record} show={show} />
            </section>
            <Holder key={classId} />
            <section className="sec">
              <h2>{say('class.whole')}</h2>
              <TextField
                label={say('class.name')}
                value={record.name}
                empty={say('class.name-empty', { kept: record.name })}
                change={(name) => edit((before) => ({ ...before, name })).map(issue)}
              />
              <div className="class-actions">
                <SaveClass />
                <CopyClass record={record} />
                <DeleteClass record={record} />
              </div>
            </section>
          </div>
        </div>
      </div>
    </HelpArea>
  );
}
