// A person says whether a yes/no rule was kept, with a note if there is something to say.

import { TEXT_CHARACTERS_MOST } from '@cairnmark/formats';
import type { Requirement } from '@cairnmark/scoring';
import { useState } from 'preact/hooks';
import { withAnswer } from '../../store/class-changes.ts';
import { asReason } from '../../store/plain-text.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';

export function JudgeRule({ rule, title }: { readonly rule: Requirement; readonly title: string }) {
  const { at, say } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const answer = at.attempt.answers[rule.id];
  const keep = (kept: boolean): void =>
    changeTry(withAnswer(rule.id, answer?.note === undefined ? { kept } : { kept, note: answer.note }));
  return (
    <div className="card-judge-rule">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as one bar in every browser */}
      <div className="seg" role="group" aria-label={say('score-card.judge-rule', { rule: title })}>
        {[true, false].map((kept) => (
          <button key={String(kept)} type="button" aria-pressed={answer?.kept === kept} onClick={() => keep(kept)}>
            {say(kept ? 'score-card.kept' : 'score-card.broken')}
          </button>
        ))}
      </div>
      {answer !== undefined && (
        <Note
          title={title}
          note={answer.note ?? ''}
          change={(note) => changeTry(withAnswer(rule.id, note === '' ? { kept: answer.kept } : { ...answer, note }))}
        />
      )}
    </div>
  );
}

function Note({
  title,
  note,
  change,
}: {
  readonly title: string;
  readonly note: string;
  readonly change: (note: string) => void;
}) {
  const { say } = useCard();
  const [typed, setTyped] = useState<string | null>(null);
  const settle = (): void => {
    if (typed !== null && asReason(typed) !== note) change(asReason(typed));
    setTyped(null);
  };
  return (
    <details className="card-note">
      <summary>{say('score-card.note')}</summary>
      <input
        aria-label={say('score-card.note-of', { rule: title })}
        className="in"
        value={typed ?? note}
        maxLength={TEXT_CHARACTERS_MOST}
        onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        onBlur={settle}
        onKeyDown={({ key }) => {
          if (key === 'Enter') settle();
        }}
      />
    </details>
  );
}
