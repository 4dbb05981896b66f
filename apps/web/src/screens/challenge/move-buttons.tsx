// Earlier or later in a list whose order matters. The focus goes with what is moved.

import { useRef } from 'preact/hooks';
import { Icon } from '../../parts/icon.tsx';
import { useForm } from './form.ts';

export function MoveButtons({
  name,
  place,
  last,
  move,
}: {
  readonly name: string;
  /** From 0. */
  readonly place: number;
  readonly last: number;
  readonly move: (step: -1 | 1) => boolean;
}) {
  const { locked, say } = useForm();
  const here = useRef<HTMLSpanElement>(null);
  if (locked || last === 0) return null;
  const go = (step: -1 | 1): void => {
    const rows = [...(here.current?.closest('.chal-moved, .chal-fold-in')?.querySelectorAll('.chal-move') ?? [])];
    const next = rows[place + step];
    if (!move(step) || next === undefined) return;
    // At the end of the list the other button is the one that there is.
    const buttons = [...next.querySelectorAll('button')];
    (buttons.find(({ dataset }) => dataset['step'] === String(step)) ?? buttons[0])?.focus();
  };
  return (
    <span className="chal-move" ref={here}>
      {place > 0 && (
        <button
          type="button"
          className="btn sq"
          data-step="-1"
          aria-label={say('challenge.earlier', { name })}
          onClick={() => go(-1)}
        >
          <Icon name="up" />
        </button>
      )}
      {place < last && (
        <button
          type="button"
          className="btn sq"
          data-step="1"
          aria-label={say('challenge.later', { name })}
          onClick={() => go(1)}
        >
          <Icon name="down" />
        </button>
      )}
    </span>
  );
}
