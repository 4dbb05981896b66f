// A field for a number with a unit: areas, volumes, seconds, counts. What cannot be read is flagged and the last value
// stays. A value is never read back from its own text, so other units change no size.

import type { Ruler, Unit } from '@cairnmark/geometry';
import { typedText } from '@cairnmark/words';
import { useId, useRef } from 'preact/hooks';
import { useScreenWords } from '../app/use-words.ts';
import './field.css';
import { FieldAnswer } from './field-answer.tsx';
import type { Limits } from './number-entry.ts';
import { useTypedNumber } from './use-typed-number.ts';
import { writtenUnits } from './written-units.ts';

export interface NumberFieldProps extends Limits {
  readonly label: string;
  /** The label is for screen readers alone: something beside the field says it already. */
  readonly hideLabel?: boolean;
  /** In the unit of the engine; null: nothing is entered. */
  readonly value: number | null;
  readonly unit: Unit;
  /** Stands behind the field in place of the name of the unit: "cm³ per cm²". */
  readonly unitName?: string | undefined;
  /** What an empty field means: "no limit". */
  readonly emptyText?: string | undefined;
  /** As lengths are shown on this device. */
  readonly ruler: Ruler;
  readonly change: (value: number) => void;
  /** An emptied field has no value; without this it keeps the last one. */
  readonly clear?: (() => void) | undefined;
  readonly disabled?: boolean;
}

export function NumberField(props: NumberFieldProps) {
  const { label, hideLabel = false, value, unit, ruler, change, clear, disabled = false } = props;
  const words = useScreenWords();
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const units = writtenUnits(unit, ruler);
  const name = props.unitName ?? units[0]?.name ?? '';
  const plain = (amount: number): string => typedText(amount, unit, ruler, words.say('field.decimal-mark'));
  const field = useTypedNumber(value === null ? '' : plain(value), units, props, change, clear);
  const refused = field.open?.kind === 'refused';
  return (
    <div className="field number-field">
      <label htmlFor={id} className={hideLabel ? 'vh' : undefined}>
        {label}
      </label>
      <span className="with">
        <input
          ref={input}
          id={id}
          className="in n"
          type="text"
          inputMode={keyboardFor(props)}
          placeholder={props.emptyText}
          autoComplete="off"
          enterKeyHint="done"
          value={field.text}
          disabled={disabled}
          aria-invalid={refused || undefined}
          aria-describedby={`${id}-answer`}
          onInput={({ currentTarget }) => field.type(currentTarget.value)}
          onBlur={field.settle}
          onKeyDown={(event) => {
            if (event.key === 'Escape') field.forget();
            if (event.key !== 'Enter') return;
            field.settle();
            // Outside a form nothing else is meant, least of all a button that takes the focus now.
            if (event.currentTarget.form === null) event.preventDefault();
          }}
        />
        {name !== '' && <span className="unit">{name}</span>}
      </span>
      <FieldAnswer
        id={`${id}-answer`}
        field={field}
        limits={props}
        kept={value}
        what={props.whole === true ? 'whole' : unit === 'mm' ? 'length' : 'number'}
        inFull={(amount) => (name === '' ? plain(amount) : `${plain(amount)}${name === '°' ? '' : ' '}${name}`)}
        mean={(meant) => {
          field.mean(meant);
          input.current?.focus();
        }}
      />
    </div>
  );
}

/** The number pads of tablets have no minus sign. */
const keyboardFor = ({ least, whole = false }: Limits): 'text' | 'numeric' | 'decimal' =>
  least < 0 ? 'text' : whole ? 'numeric' : 'decimal';
