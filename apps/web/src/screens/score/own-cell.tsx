// What the group worked out itself: entered here, compared at once, and taken away again if they like.

import type { OwnLine, OwnResult, ReportedFact } from '@cairnmark/engine';
import { VALUE_MOST } from '@cairnmark/engine';
import { MEASURES } from '@cairnmark/geometry';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Icon } from '../../parts/icon.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { withOwn, withoutOwn } from '../../store/class-changes.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';
import type { ScoreLine } from './lines.ts';

export function OwnCell({ line }: { readonly line: ScoreLine }) {
  const { at, inClass, ruler, say } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const [open, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const form = useRef<HTMLSpanElement>(null);
  const wasOpen = useRef(false);
  useLayoutEffect(() => {
    // The focus goes into what opens, and back to where it came from.
    if (open) form.current?.querySelector('input')?.focus();
    else if (wasOpen.current) button.current?.focus();
    wasOpen.current = open;
  }, [open]);
  const measure = ownMeasure(line.id);
  if (measure === null || !canCompare(line)) return <span className="card-own" />;
  const own = at.attempt.own.find((one) => one.measure === measure) ?? null;
  const label = inClass.label(measure);
  if (!open) {
    return (
      <span className="card-own" aria-live="polite">
        {line.own !== null && <Verdict own={line.own} />}
        <button ref={button} type="button" className="btn bare" onClick={() => setOpen(true)}>
          {say(own === null ? 'score-card.enter-own' : 'score-card.change-own')}
          <span className="vh">: {label}</span>
        </button>
      </span>
    );
  }
  return (
    <span className="card-own card-own-open" ref={form}>
      <NumberField
        label={say('score-card.own-of', { measure: label })}
        hideLabel
        value={own?.value ?? null}
        unit={line.fact?.unit ?? 'count'}
        unitName={inClass.unit(measure).name}
        ruler={ruler}
        least={0}
        most={VALUE_MOST}
        change={(value) => {
          changeTry(withOwn({ measure, value }));
          setOpen(false);
        }}
        clear={() => {
          changeTry(withoutOwn(measure));
          setOpen(false);
        }}
      />
      {own !== null && (
        <button
          type="button"
          className="btn"
          onClick={() => {
            changeTry(withoutOwn(measure));
            setOpen(false);
          }}
        >
          {say('score-card.drop-own')}
        </button>
      )}
      <button type="button" className="btn" onClick={() => setOpen(false)}>
        {say('score-card.done')}
      </button>
    </span>
  );
}

function Verdict({ own }: { readonly own: OwnLine }) {
  const { at, inClass, say } = useCard();
  const value = inClass.fullAmount(own.measure, own.own);
  if (own.verdict === 'agrees' || own.verdict === 'close') {
    return (
      <span className="card-own-verdict">
        <Icon name={own.verdict === 'agrees' ? 'yes' : 'near'} />
        <span>{say(`score-card.own-${own.verdict}`, { value })}</span>
      </span>
    );
  }
  return (
    <span className="card-own-verdict card-differs">
      <Differs />
      <span>{inClass.own(own, at.challenge.own.pi)}</span>
    </span>
  );
}

const Differs = () => (
  <svg className="ic" viewBox="0 0 20 20" aria-hidden="true">
    <path d="M3 7h14M3 13h14M13 3L7 17" />
  </svg>
);

/** Own results are of what geometry measures; nobody works out a mark or the seconds. */
const ownMeasure = (id: string): OwnResult['measure'] | null => MEASURES.find((one) => one.id === id)?.id ?? null;

const canCompare = ({ fact, own }: { readonly fact: ReportedFact | null; readonly own: OwnLine | null }): boolean =>
  own !== null || fact?.predicted?.status === 'measured';
