// All lines of the card: those that earn points with the bill below them, what was measured besides, and the rest in a fold.

import type { ComponentChildren } from 'preact';
import { CardHelp } from '../../app/card-help.tsx';
import { useCard } from './card.ts';
import { Line } from './line.tsx';
import type { ScoreLine } from './lines.ts';
import { OursFirstSwitch } from './ours-first-switch.tsx';
import { pointsText } from './points-text.ts';

export function LinesTable() {
  const { lines, say, at } = useCard();
  const numbersOnly = at.attempt.layout.kind === 'numbers-only';
  return (
    <>
      {numbersOnly && <p className="note card-numbers-only">{say('score-card.numbers-only')}</p>}
      <OursFirstSwitch />
      <section aria-labelledby="scoring-lines">
        <h2 className="vh" id="scoring-lines">
          {say('score-card.scores')}
        </h2>
        <div className="card-flat card-heads" aria-hidden="true">
          <span>{say('score-card.what')}</span>
          <span>{say('score-card.result')}</span>
          <span>{say('score-card.own')}</span>
          <span className="card-p">{say('score-card.points-head')}</span>
        </div>
        <CardHelp
          items={[
            ['help.line', say('score-card.what')],
            ['help.own', say('score-card.enter-own'), say('score-card.change-own')],
            ['help.decide', say('score-card.decide')],
            ...(lines.rest.length > 0 ? [['help.show-all', say('score-card.show-all')] as const] : []),
          ]}
        />
        <Lines lines={lines.scoring}>
          <BillRows />
        </Lines>
      </section>
      {lines.also.length > 0 && (
        <section className="card-also" aria-labelledby="also-measured">
          <div className="card-also-head">
            <h2 id="also-measured">{say('score-card.also')}</h2>
            <span className="mut">{say('score-card.also-none')}</span>
          </div>
          <Lines lines={lines.also} />
        </section>
      )}
      {lines.rest.length > 0 && (
        <details className="card-rest">
          <summary>{say('score-card.show-all')}</summary>
          <Lines lines={lines.rest} />
        </details>
      )}
    </>
  );
}

const Lines = ({
  lines,
  children,
}: {
  readonly lines: readonly ScoreLine[];
  readonly children?: ComponentChildren;
}) => (
  <ul className="card-lines">
    {lines.map((line) => (
      <Line key={line.id} line={line} />
    ))}
    {children}
  </ul>
);

/** What is added to the lines or taken away, so that the points above add up to the total. */
function BillRows() {
  const { at, bill, inClass, words, say, lines, covering } = useCard();
  const fallen =
    at.challenge.fallen.counts === 'as-measured' ? null : inClass.fallen(at.attempt.state, at.challenge.fallen);
  const rows = [
    { text: say('score-card.of-rules'), points: bill.rules },
    { text: say('score-card.of-hand'), points: bill.byHand },
  ].filter(({ points }) => points !== 0);
  if (lines.scoring.length === 0 && rows.length === 0) {
    return <li className="card-line mut card-nothing-scores">{say('score-card.no-scoring')}</li>;
  }
  return (
    <>
      {rows.map(({ text, points }) => (
        <li key={text} className="card-line">
          <div className="card-flat card-bill">
            <span className="card-nm">{text}</span>
            <span className="card-p">{pointsText(points, bill.decimals, words)}</span>
          </div>
        </li>
      ))}
      {fallen !== null && (
        <li className="card-line">
          <p className="card-fell">{fallen}</p>
        </li>
      )}
      <li className="card-line card-sum">
        <div className="card-flat card-bill">
          <span className="card-nm">{say('score-card.total')}</span>
          {covering.totalCovered ? (
            <span className="mut">{say('ours-first.total')}</span>
          ) : (
            <span className="card-p">{bill.total === null ? '–' : words.number(bill.total, bill.decimals)}</span>
          )}
        </div>
      </li>
    </>
  );
}
