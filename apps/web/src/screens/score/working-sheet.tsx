// A working on squared paper, row by row, with what it earns below it.

import { useCard } from './card.ts';
import type { ScoreLine } from './lines.ts';

export function WorkingSheet({ line }: { readonly line: ScoreLine }) {
  const { at, inClass, words, say } = useCard();
  const { fact, rows, own } = line;
  const ownEarns = own !== null && own.points !== 0;
  const working = fact?.predicted?.status === 'measured' ? inClass.workingRows(fact.predicted) : [];
  if (working.length === 0 && rows.length === 0 && !ownEarns) return null;
  return (
    <div className="squared card-sheet">
      {working.map(({ what, how, result, whole }) => (
        <p key={`${what} ${how} ${result}`} className={whole ? 'card-fr card-whole' : 'card-fr'}>
          <span>{what}</span>
          <span>{how}</span>
          <span className="card-res">{result}</span>
        </p>
      ))}
      {rows.map(({ row, line: points }) => (
        <p key={row.id} className="card-fr">
          <span>{say('score-card.points-row')}</span>
          <span>{inClass.points(points, row, fact?.tolerance ?? 0)}</span>
          <span className="card-res">{points.points === null ? '?' : words.counted('points', points.points)}</span>
        </p>
      ))}
      {ownEarns && (
        <p className="card-fr">
          <span>{say('score-card.points-row')}</span>
          <span>{inClass.own(own, at.challenge.own.pi)}</span>
          <span className="card-res">{words.counted('points', own.points)}</span>
        </p>
      )}
    </div>
  );
}
