// Predicted, observed and decided side by side; the one that counts is marked.

import type { FactSource, ReportedFact } from '@cairnmark/engine';
import { useCard } from './card.ts';

export function ThreeValues({ fact }: { readonly fact: ReportedFact }) {
  const { inClass, words } = useCard();
  const { id, unit, predicted, observed, decided, source } = fact;
  const read = (value: number, tolerance: number): string =>
    `${inClass.amount(id, value, tolerance)} ${inClass.error(id, tolerance)}`.trimEnd();
  const readings = (observed?.readings ?? []).map((value) => inClass.full(value, unit));
  return (
    <dl className="card-three">
      <Value
        of="predicted"
        counts={source === 'predicted'}
        text={predicted?.status === 'measured' ? read(predicted.value, predicted.tolerance) : null}
      />
      <Value
        of="observed"
        counts={source === 'observed'}
        text={observed === null ? null : read(observed.value, observed.tolerance)}
        note={readings.length > 1 ? words.listed(readings) : ''}
      />
      <Value
        of="decided"
        counts={source === 'decided'}
        text={decided === null ? null : inClass.fullAmount(id, decided.value)}
        note={decided === null ? '' : `${decided.by}: ${decided.reason}`}
      />
    </dl>
  );
}

function Value({
  of,
  counts,
  text,
  note = '',
}: {
  readonly of: Exclude<FactSource, 'judged'>;
  readonly counts: boolean;
  /** null: there is none. */
  readonly text: string | null;
  readonly note?: string;
}) {
  const { say } = useCard();
  return (
    <div className={counts ? 'card-counts' : undefined}>
      <dt>
        {say(`score-card.${of}`)}
        {counts && <small> ({say('score-card.counts')})</small>}
      </dt>
      <dd>
        {text === null ? <span className="mut">{say('score-card.not-there')}</span> : <b>{text}</b>}
        {note !== '' && <small className="mut">{note}</small>}
      </dd>
    </div>
  );
}
