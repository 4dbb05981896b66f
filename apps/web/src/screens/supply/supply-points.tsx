// What the supply of the group is worth, row by row, and the way on to Build.

import type { PointsLine, PointsRow } from '@cairnmark/scoring';
import { Link } from 'wouter-preact';
import { decimalsOf } from '../../parts/decimals.ts';
import { useGame } from './game.ts';
import { worthOf } from './worth.ts';

export function SupplyPoints() {
  const { at, say, supply, words } = useGame();
  const { lines, total } = worthOf(supply, at.challenge, at.group);
  const decimals = decimalsOf([...lines.map(({ line }) => line.points), total]);
  const free = supply.penaltyPoints > 0 && !lines.some(({ row }) => row.measure === 'earned:penalties');
  return (
    <section className="supply-points">
      <h2>{say('supply-game.points')}</h2>
      {lines.length === 0 ? (
        <p className="mut">{say('supply-game.no-points')}</p>
      ) : (
        <>
          <p className="supply-total">
            {words.number(total ?? 0, decimals)} <small>{say('supply-game.points-unit')}</small>
          </p>
          <ul>
            {lines.map(({ row, line }) => (
              <Line key={row.id} row={row} line={line} decimals={decimals} />
            ))}
            <li className="supply-sum">
              <span>{say('supply-game.total')}</span>
              <b>{words.number(total ?? 0, decimals)}</b>
            </li>
          </ul>
        </>
      )}
      {free && <p className="mut">{say('supply-game.penalties-free')}</p>}
      <Link className="btn main" href="/build">
        {say('supply-game.to-build')}
      </Link>
    </section>
  );
}

function Line({
  row,
  line,
  decimals,
}: {
  readonly row: PointsRow;
  readonly line: PointsLine;
  readonly decimals: number;
}) {
  const { say, words, inClass } = useGame();
  const times = line.times ?? 0;
  const odd = row.per !== 1 || line.limited !== null;
  return (
    <li>
      <span>
        {words.capital(inClass.label(row.measure))}
        {odd && <small className="mut">{inClass.points(line, row, 0)}</small>}
        {row.measure === 'earned:full-sets' && <Missing />}
      </span>
      <span className="mut">
        {say('supply-game.times', { count: words.number(times), each: words.number(row.points) })}
      </span>
      <b>{words.number(line.points ?? 0, decimals)}</b>
    </li>
  );
}

/** Named one by one as long as that is short. */
const NAMED_MOST = 3;

/** What a full set still wants. */
function Missing() {
  const { at, say, supply, words } = useGame();
  const missing = at.challenge.kit.kinds.filter(({ id }) => (supply.pieces[id] ?? 0) === 0).map(({ name }) => name);
  if (missing.length === 0) return null;
  return (
    <small className="mut">
      {missing.length > NAMED_MOST
        ? say('supply-game.missing-kinds', { count: missing.length })
        : say('supply-game.missing', { kinds: words.listed(missing) })}
    </small>
  );
}
