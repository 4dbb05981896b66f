// Language and units of this device, and who holds it.

import { LANGUAGES } from '@cairnmark/words';
import { useRef } from 'preact/hooks';
import { HelpArea, HelpButton, HelpList } from '../parts/asked-help.tsx';
import { Choice } from '../parts/choice.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { Icon } from '../parts/icon.tsx';
import { useSession } from '../store/use-session.ts';
import { RoleChoice } from './role-choice.tsx';
import { SaveClass } from './save-class.tsx';
import { unitsInUse } from './units-in-use.ts';
import { useScreenWords } from './use-words.ts';

export function Settings() {
  const words = useScreenWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const { language, units, speak, measureIn, open } = useSettings();
  return (
    <>
      <button type="button" className="btn bare sq" onClick={() => dialog.current?.showModal()}>
        <Icon name="settings" />
        <span className="vh">{words.say('frame.settings')}</span>
      </button>
      <Dialog dialog={dialog} title={words.say('frame.settings')}>
        <div className="places">
          <Choice
            label={words.say('frame.language')}
            options={LANGUAGES.map((id) => ({ id, text: words.say(`language.${id}`) }))}
            chosen={language}
            choose={speak}
          />
          <Choice
            label={words.say('frame.units')}
            options={(['cm', 'in'] as const).map((id) => ({ id, text: words.say(`units.${id}`) }))}
            chosen={units}
            choose={measureIn}
          />
          {open && <RoleChoice />}
          {open && <SaveClass />}
          <HelpArea>
            <HelpButton />
            <HelpList
              items={[
                ['help.language', words.say('frame.language')],
                ['help.units', words.say('frame.units')],
                ...(open
                  ? ([
                      ['help.role', words.say('role.who')],
                      ['help.class-file', words.say('frame.class-file')],
                    ] as const)
                  : []),
              ]}
            />
          </HelpArea>
        </div>
      </Dialog>
    </>
  );
}

function useSettings() {
  return {
    language: useSession((session) => session.language),
    units: unitsInUse(
      useSession((session) => session.units),
      useSession((session) => session.record?.challenges[0]?.ruler ?? null),
    ),
    speak: useSession((session) => session.speak),
    measureIn: useSession((session) => session.measureIn),
    open: useSession((session) => session.record !== null),
  };
}
