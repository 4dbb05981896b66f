// The lines of the card as a table for paper.

import { useCard } from './card.ts';
import type { ScoreLine } from './lines.ts';
import { pointsText } from './points-text.ts';

export function PrintLines() {
  const { lines, bill, words, say } = useCard();
  const below = [
    { text: say('score-card.of-rules'), points: bill.rules },
    { text: say('score-card.of-hand'), points: bill.byHand },
  ].filter(({ points }) => points !== 0);
  return (
    <>
      <table>
        <thead>
          <tr>
            <th>{say('score-card.what')}</th>
            <th>{say('score-card.result')}</th>
            <th>{say('score-card.own')}</th>
            <th className="card-p">{say('score-card.points-head')}</th>
          </tr>
        </thead>
        <tbody>
          {lines.scoring.map((line) => (
            <PrintLine key={line.id} line={line} />
          ))}
          {below.map(({ text, points }) => (
            <tr key={text}>
              <td colSpan={3}>{text}</td>
              <td className="card-p">{pointsText(points, bill.decimals, words)}</td>
            </tr>
          ))}
          <tr className="card-sum">
            <td colSpan={3}>{say('score-card.total')}</td>
            <td className="card-p">{bill.total === null ? '–' : words.number(bill.total, bill.decimals)}</td>
          </tr>
        </tbody>
      </table>
      {lines.also.length > 0 && (
        <>
          <h2>{say('score-card.also')}</h2>
          <dl>
            {lines.also.map((line) => (
              <Besides key={line.id} line={line} />
            ))}
          </dl>
        </>
      )}
    </>
  );
}

function PrintLine({ line: { id, fact, own, points } }: { readonly line: ScoreLine }) {
  const { inClass, words, bill } = useCard();
  return (
    <tr>
      <td>{words.capital(inClass.label(id))}</td>
      <td>{fact === null ? '–' : inClass.fact(fact)}</td>
      <td>{own === null ? '' : inClass.fullAmount(own.measure, own.own)}</td>
      <td className="card-p">{pointsText(points, bill.decimals, words)}</td>
    </tr>
  );
}

/** What earns nothing stands in short, with the own result behind it. */
function Besides({ line: { id, fact, own } }: { readonly line: ScoreLine }) {
  const { inClass, words, say } = useCard();
  const result = fact === null ? '–' : inClass.fact(fact);
  const ours = own === null ? '' : ` (${say('score-card.own')}: ${inClass.fullAmount(own.measure, own.own)})`;
  return (
    <div>
      <dt>{words.capital(inClass.label(id))}</dt>
      <dd>
        {result}
        {ours}
      </dd>
    </div>
  );
}
