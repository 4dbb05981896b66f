// The lines of the card as a table for paper.

import type { ReportedFact } from '@cairnmark/engine';
import { useCard } from './card.ts';
import { isSeen } from './line.tsx';
import type { ScoreLine } from './lines.ts';
import { pointsText } from './points-text.ts';

export function PrintLines() {
  const { lines, bill, words, say } = useCard();
  const below = [
    { text: say('score-card.of-rules'), points: bill.rules },
    { text: say('score-card.of-hand'), points: bill.byHand },
  ].filter(({ points }) => points !== 0);
  const nothingScores = lines.scoring.length + below.length === 0;
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
          {nothingScores ? (
            <tr>
              <td colSpan={4}>{say('score-card.no-scoring')}</td>
            </tr>
          ) : (
            <tr className="card-sum">
              <td colSpan={3}>{say('score-card.total')}</td>
              <td className="card-p">{bill.total === null ? '–' : words.number(bill.total, bill.decimals)}</td>
            </tr>
          )}
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
  const { result, source } = useResult(fact);
  return (
    <tr>
      <td>{words.capital(inClass.label(id))}</td>
      <td>
        {result}
        {source !== null && <small> ({source})</small>}
      </td>
      <td>{own === null ? '' : inClass.fullAmount(own.measure, own.own)}</td>
      <td className="card-p">{pointsText(points, bill.decimals, words)}</td>
    </tr>
  );
}

/** What earns nothing stands in short, with the own result behind it. */
function Besides({ line: { id, fact, own } }: { readonly line: ScoreLine }) {
  const { inClass, words, say } = useCard();
  const { result, source } = useResult(fact);
  const ours = own === null ? '' : ` (${say('score-card.own')}: ${inClass.fullAmount(own.measure, own.own)})`;
  return (
    <div>
      <dt>{words.capital(inClass.label(id))}</dt>
      <dd>
        {result}
        {source !== null && <small> ({source})</small>}
        {ours}
      </dd>
    </div>
  );
}

/** With where it comes from, when people read or decided it: paper is looked at without the other two values beside it. */
function useResult(fact: ReportedFact | null): { readonly result: string; readonly source: string | null } {
  const { inClass, words } = useCard();
  if (fact === null) return { result: '–', source: null };
  return { result: inClass.fact(fact), source: isSeen(fact) ? words.names.sources[fact.source ?? 'predicted'] : null };
}
