// A whole number with its unit. What cannot be read is flagged, and the last value stays.

import { useId, useState } from 'react';

export function WholeField({
  label,
  unit,
  value,
  change,
}: {
  readonly label: string;
  readonly unit: string;
  readonly value: number | null;
  readonly change: (value: number) => void;
}) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const bad = typed !== null && wholeOf(typed) === null;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="with">
        <input
          id={id}
          className="in n"
          inputMode="numeric"
          value={typed ?? (value === null ? '' : String(value))}
          aria-invalid={bad}
          onChange={({ target }) => {
            setTyped(target.value);
            const whole = wholeOf(target.value);
            if (whole !== null) change(whole);
          }}
          onBlur={() => setTyped(null)}
        />
        <span className="u">{unit}</span>
      </span>
    </div>
  );
}

/** Digits alone, six at most. */
const wholeOf = (text: string): number | null => (/^\s*\d{1,6}\s*$/.test(text) ? Number(text) : null);
