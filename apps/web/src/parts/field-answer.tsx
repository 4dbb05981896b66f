// What a field says below itself: why it did not take a number, or which of two numbers was meant.

import { useScreenWords } from '../app/use-words.ts';
import type { Fault, Limits } from './number-entry.ts';
import type { TypedField } from './use-typed-number.ts';

export function FieldAnswer({
  id,
  field,
  limits,
  kept,
  what,
  inFull,
  mean,
}: {
  readonly id: string;
  readonly field: TypedField;
  readonly limits: Limits;
  /** The last value, which stays; null: there is none. */
  readonly kept: number | null;
  /** What the field is for. */
  readonly what: 'length' | 'number' | 'whole';
  /** A number with its unit. */
  readonly inFull: (value: number) => string;
  readonly mean: (value: number) => void;
}) {
  const words = useScreenWords();
  const text = field.text.trim();
  const reason = (fault: Fault): string => {
    switch (fault) {
      case 'empty':
        return words.say('field.empty');
      case 'unreadable':
      case 'not-whole':
        return words.say(`field.unread-${what}`, { text });
      case 'too-small':
        return words.say('field.too-small', { text, least: inFull(limits.least) });
      case 'too-large':
        return words.say('field.too-large', { text, most: inFull(limits.most) });
    }
  };
  const { open } = field;
  return (
    <div role="status" id={id} className="field-answer">
      {open?.kind === 'refused' && (
        <p className="oops">
          <WarningSign />
          <span>
            {reason(open.fault)} {kept !== null && words.say('field.kept', { kept: inFull(kept) })}
          </span>
        </p>
      )}
      {open?.kind === 'either' && (
        <>
          <p>{words.say('field.either', { text })}</p>
          {[open.decimal, open.thousands].map((meant) => (
            <button key={meant} type="button" className="btn" onClick={() => mean(meant)}>
              {inFull(meant)}
            </button>
          ))}
        </>
      )}
    </div>
  );
}

const WarningSign = () => (
  <svg className="ic" viewBox="0 0 24 24" aria-hidden="true">
    <path d="M12 4 21 20H3Z" />
    <path d="M12 10v5M12 17.6v.1" />
  </svg>
);
