// One line: what is measured, the result with its error, the group's own result, the points; unfolded, all behind it.

import type { ReportedFact } from '@cairnmark/engine';
import { useId, useRef, useState } from 'preact/hooks';
import { useCard } from './card.ts';
import { CoveredValue } from './covered-value.tsx';
import { LineDetail } from './line-detail.tsx';
import type { ScoreLine } from './lines.ts';
import { OwnCell } from './own-cell.tsx';
import { pointsText } from './points-text.ts';

export function Line({ line }: { readonly line: ScoreLine }) {
  const { inClass, words, bill, say, covering } = useCard();
  const id = useId();
  const [open, setOpen] = useState(false);
  const name = useRef<HTMLButtonElement>(null);
  const { fact } = line;
  const covered = covering.covered.has(line.id);
  return (
    <li className="card-line">
      <div className="card-flat">
        <button
          ref={name}
          type="button"
          className="card-dis card-nm"
          aria-expanded={open}
          aria-controls={open ? id : undefined}
          onClick={() => setOpen(!open)}
        >
          {words.capital(inClass.label(line.id))}
        </button>
        <span className="card-val">
          <span className="vh">{say('score-card.result')}: </span>
          {covered ? (
            <CoveredValue measure={line.id} looked={() => name.current?.focus()} />
          ) : fact === null ? (
            '–'
          ) : (
            <Value text={inClass.fact(fact)} measured={fact.value !== null} />
          )}
          {covering.looked.has(line.id) && <small className="mut card-looked"> {say('ours-first.looked')}</small>}
          {fact !== null && isSeen(fact) && (
            <small className="mut"> {words.names.sources[fact.source ?? 'predicted']}</small>
          )}
        </span>
        <OwnCell line={line} />
        <span className="card-p">
          <span className="vh">{say('score-card.points-head')}: </span>
          {covered && line.rows.length > 0 ? (
            '?'
          ) : line.scores ? (
            pointsText(line.points, bill.decimals, words)
          ) : (
            <>
              <span aria-hidden="true">–</span>
              <span className="vh">{say('score-card.earns-none')}</span>
            </>
          )}
        </span>
      </div>
      {open && (
        <div className="card-work" id={id}>
          <LineDetail line={line} />
        </div>
      )}
    </li>
  );
}

/** Read off the real build, or set by a person: what is worked out needs no saying. */
export const isSeen = ({ source, observed }: ReportedFact): boolean =>
  source === 'decided' || (source === 'observed' && observed !== null);

/** "27.0 cm ± 0.3 cm": the error is lighter than the number. */
function Value({ text, measured }: { readonly text: string; readonly measured: boolean }) {
  if (!measured) return <span className="mut card-not-measured">{text}</span>;
  const [value, error] = text.split(' ± ');
  return (
    <>
      <b>{value}</b>
      {error !== undefined && <span className="mut"> ± {error}</span>}
    </>
  );
}
