// Help in place: "What is this?" is pressed once, and beside the controls one sentence each says what they do.

import type { ScreenKey } from '@cairnmark/words';
import type { ComponentChildren } from 'preact';
import { createContext } from 'preact';
import { useContext, useState } from 'preact/hooks';
import { useScreenWords } from '../app/use-words.ts';
import './asked-help.css';

type HelpKey = Extract<ScreenKey, `help.${string}`>;
/** The sentence, and the controls that it is of by the words that stand on them. */
type HelpItem = readonly [HelpKey, ...string[]];

type HelpText = readonly [sentence: string, ...controls: string[]];

/** All within is explained or not, together. */
export function HelpArea({ children }: { readonly children: ComponentChildren }) {
  const [on, setOn] = useState(false);
  return <Asked value={{ on, turn: () => setOn(!on) }}>{children}</Asked>;
}

export function HelpButton() {
  const { on, turn } = useContext(Asked);
  return (
    <button type="button" className="btn bare help-button" aria-pressed={on} onClick={turn}>
      {useScreenWords().say('frame.help')}
    </button>
  );
}

/** `on`: where the screen itself holds whether somebody asks. */
export function HelpList({ items, on }: { readonly items: readonly HelpItem[]; readonly on?: boolean }) {
  const { say } = useScreenWords();
  const texts = items.map(([sentence, ...controls]): HelpText => [say(sentence), ...controls]);
  return <HelpTexts items={texts} {...(on === undefined ? {} : { on })} />;
}

/** The same for sentences of another catalogue. */
export function HelpTexts({ items, on }: { readonly items: readonly HelpText[]; readonly on?: boolean }) {
  const asked = useContext(Asked);
  if (!(on ?? asked.on)) return null;
  return (
    <dl className="help help-list note">
      {items.map(([sentence, ...controls]) => (
        <div key={sentence}>
          {controls.map((control) => (
            <dt key={control}>{control}</dt>
          ))}
          <dd>{sentence}</dd>
        </div>
      ))}
    </dl>
  );
}

const Asked = createContext<{ readonly on: boolean; readonly turn: () => void }>({ on: false, turn: () => undefined });
