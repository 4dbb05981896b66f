// One row of a list that can be added to: its fields, why a change of it was refused, and the button that takes it out.

import type { FileIssue } from '@cairnmark/formats';
import type { ComponentChildren } from 'preact';
import { Icon } from '../../parts/icon.tsx';
import { useForm } from './form.ts';
import { Told } from './told.tsx';

export function Row({
  name,
  kind,
  faults,
  remove,
  staysOpen = false,
  children,
}: {
  /** What the row is about. */
  readonly name: string;
  /** Which columns it has. */
  readonly kind: string;
  readonly faults: readonly FileIssue[];
  /** null: it cannot be taken out. */
  readonly remove: (() => void) | null;
  /** It decides nothing, so it can be taken out after groups have built too. */
  readonly staysOpen?: boolean;
  readonly children: ComponentChildren;
}) {
  const { locked, say } = useForm();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a grid in every browser
    <div className={`chal-row ${kind}`} role="group" aria-label={name}>
      {children}
      {remove !== null && (staysOpen || !locked) && (
        <button
          type="button"
          className="btn bare sq chal-out"
          aria-label={say('challenge.take-out', { name })}
          onClick={remove}
        >
          <Icon name="no" />
        </button>
      )}
      <Told faults={faults} />
    </div>
  );
}
