// The sizes of one kind as fields. Sizes that do not fit together yet stay as they were typed until they do; a size that
// looks like a slip of the ruler is asked about. Meanwhile the last good sizes count.

import type { Sizes, SolidSpec } from '@cairnmark/geometry';
import {
  definitionOf,
  FEWEST_SIDES,
  LARGEST_SIZE_MM,
  MOST_SIDES,
  makeSolid,
  SMALLEST_SIZE_MM,
} from '@cairnmark/geometry';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { LengthField } from '../../parts/length-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import type { Doubt } from './doubts.ts';
import { doubtOf } from './doubts.ts';
import { DraftAnswer } from './draft-answer.tsx';
import { useKit } from './use-kit.ts';
import { writtenName } from './ways.ts';

/** Typed, but not taken. */
export interface Draft {
  readonly sizes: Sizes;
  readonly told: readonly string[];
  readonly doubt: Doubt | null;
}

export function SizesFields({
  label,
  spec,
  disabled = false,
  fixedSides = false,
  put,
  children,
}: {
  /** What has these sizes. */
  readonly label: string;
  readonly spec: SolidSpec;
  readonly disabled?: boolean;
  /** The number of sides is not theirs to change: it would be another solid. */
  readonly fixedSides?: boolean;
  /** Takes sizes that make a solid, or gives the sentences of why not. */
  readonly put: (sizes: Sizes) => readonly string[];
  readonly children?: ComponentChildren;
}) {
  const { say, words, ruler, told } = useKit();
  const group = useRef<HTMLDivElement>(null);
  const [draft, setDraft] = useState<Draft | null>(null);
  const kept = spec.sizes;
  // Taken back, or measured by another way: what was typed before is of no use any more.
  useLayoutEffect(() => setDraft(null), [kept]);
  const names: Readonly<Record<string, string>> = words.names.sizes;
  const sizes = draft?.sizes ?? kept;
  const take = (next: Sizes): void => {
    const made = makeSolid({ ...spec, sizes: next });
    const refused = made.ok ? put(next) : told(made.issues);
    setDraft(refused.length === 0 ? null : { sizes: next, told: refused, doubt: null });
  };
  const change = (name: string, value: number): void => {
    const next = { ...sizes, [name]: value };
    const doubt = draft === null ? doubtOf(spec, name, value, ruler.unit) : null;
    if (doubt === null) take(next);
    else setDraft({ sizes: next, told: [], doubt });
  };
  const focusField = (name: string): void =>
    group.current?.querySelector<HTMLInputElement>(`[data-size="${name}"] input`)?.focus();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out in a row in every browser
    <div ref={group} className="kit-sizes" role="group" aria-label={label}>
      {definitionOf(spec.solid).fields.map((field) => {
        if (fixedSides && field.unit === 'count') return null;
        const name = writtenName(field, sizes);
        const shared = {
          label: field.unit === 'count' ? say('kit.sides') : (names[name] ?? name),
          ruler,
          disabled,
          change: (value: number) => change(name, value),
        };
        return (
          <span key={field.name} className={`kit-size kit-size-${field.unit}`} data-size={name}>
            {field.unit === 'count' ? (
              <NumberField
                {...shared}
                value={sizes[name] ?? null}
                unit="count"
                least={FEWEST_SIDES}
                most={MOST_SIDES}
                whole
              />
            ) : (
              <LengthField
                {...shared}
                valueMm={sizes[name] ?? null}
                leastMm={SMALLEST_SIZE_MM}
                mostMm={LARGEST_SIZE_MM}
              />
            )}
          </span>
        );
      })}
      {children}
      <DraftAnswer
        draft={draft}
        spec={spec}
        settle={(settled, name) => {
          if (settled === null) setDraft(null);
          else take(settled);
          focusField(name);
        }}
      />
    </div>
  );
}
