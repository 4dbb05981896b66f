// The rules as sentences, to read to the class or to show on the projector.

import type { Requirement } from '@cairnmark/scoring';
import { useRef } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useForm } from './form.ts';

export function ReadAloud() {
  const { challenge, say } = useForm();
  const dialog = useRef<HTMLDialogElement>(null);
  return (
    <aside className="chal-aloud" aria-labelledby="chal-aloud">
      <h2 id="chal-aloud">{say('challenge.aloud')}</h2>
      <Sentences />
      <button type="button" className="btn" onClick={() => dialog.current?.showModal()}>
        <Icon name="screen" />
        {say('challenge.show-large')}
      </button>
      <Link className="btn" href="/print">
        <Icon name="print" />
        {say('challenge.to-print')}
      </Link>
      <div className="chal-large">
        <Dialog dialog={dialog} title={challenge.name}>
          <Sentences />
        </Dialog>
      </div>
    </aside>
  );
}

function Sentences() {
  const { challenge, words, inClass, say } = useForm();
  const { points, requirements, supply } = challenge;
  const sentence = (text: string): string => `${words.capital(text)}${/[.!?]$/.test(text) ? '' : '.'}`;
  const rules = requirements.map((rule) => sentence(inClass.statedRule(asPhrase(rule))));
  const rows = points.map((row) => sentence(inClass.statedRow(row)));
  const wins = [
    sentence(inClass.order(challenge.ranking)),
    say(`challenge.attempt-${challenge.attemptCounts}`),
    inClass.falling(challenge.fallen),
  ];
  const parts = [
    { title: say('challenge.aloud-points'), sentences: rows },
    { title: say('challenge.aloud-rules'), sentences: rules },
    { title: say('challenge.aloud-wins'), sentences: wins },
    { title: say('challenge.aloud-game'), sentences: supply === null ? [] : words.game(supply) },
  ];
  return (
    <>
      {parts.map(
        ({ title, sentences }) =>
          sentences.length > 0 && (
            <div key={title} className="chal-part">
              <h3>{title}</h3>
              <ul>
                {sentences.map((text, k) => (
                  <li key={k}>{text}</li>
                ))}
              </ul>
            </div>
          ),
      )}
    </>
  );
}

/** What hangs on a rule stands behind its text, so the text is no sentence of its own there. */
const asPhrase = (rule: Requirement): Requirement =>
  rule.kind === 'judged' ? { ...rule, text: rule.text.replace(/(?<=[^.])\.$/, '') } : rule;
