// Both rankings of the same builds, a line a group, in the order of the places by the new points.

import type { Challenge, ClassRecord, ClassScore } from '@cairnmark/engine';
import { POINTS_ID } from '@cairnmark/engine';
import type { RankingKey, Standing } from '@cairnmark/scoring';
import type { Lab } from './lab.ts';
import { useLab } from './lab.ts';
import { firstOf, sideBySide } from './ranked-under.ts';

export function RankedTable({
  score,
  record,
  before,
  after,
}: {
  readonly score: ClassScore;
  readonly record: ClassRecord;
  readonly before: Challenge;
  readonly after: Challenge;
}) {
  const lab = useLab();
  const { say, words } = lab;
  const lines = sideBySide(score, before, after);
  const name = (group: string): string => record.groups.find(({ id }) => id === group)?.name ?? group;
  const firsts = [firstOf(lines.map((line) => line.before)), firstOf(lines.map((line) => line.after))] as const;
  if (firsts.some((first) => first.length === 0)) return <p>{say('lab.no-builds', { challenge: before.name })}</p>;
  const [was, would] = firsts.map((first) => words.listed(first.map(name)));
  const isSame = [...firsts[0]].sort().join() === [...firsts[1]].sort().join();
  return (
    <>
      <p className="fair-said">
        <b>{say(isSame ? 'lab.same-winner' : 'lab.other-winner')}</b> {say('lab.first-before', { groups: was ?? '' })}{' '}
        {say('lab.first-after', { groups: would ?? '' })}
      </p>
      <table className="fair-ranked">
        <thead>
          <tr>
            <th scope="col">{say('lab.group')}</th>
            <th scope="col">{say('lab.as-it-was')}</th>
            <th scope="col">{say('lab.by-these')}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.group}>
              <th scope="row">{name(line.group)}</th>
              <td data-title={say('lab.as-it-was')}>
                <Place standing={line.before} by={before.ranking.first} lab={lab} />
              </td>
              <td data-title={say('lab.by-these')}>
                <Place standing={line.after} by={after.ranking.first} lab={lab} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** "2nd: 34.9 cm"; the first place in boxwood. */
function Place({
  standing: { place, decidedBy },
  by,
  lab: { say, words, inClass },
}: {
  readonly standing: Standing;
  readonly by: RankingKey;
  readonly lab: Lab;
}) {
  const [first] = decidedBy;
  if (place === null || first === undefined || first.value === null) {
    return <span className="mut">{say('lab.not-ranked')}</span>;
  }
  const value =
    by.by === POINTS_ID
      ? words.counted('points', first.value)
      : by.roundTo > 0
        ? inClass.roundedAmount(by.by, first.value, by.roundTo)
        : inClass.exactAmount(by.by, first.value);
  return (
    <span className={place === 1 ? 'fair-first' : undefined}>
      {say('lab.place-with', { place: words.ordinal(place), value })}
    </span>
  );
}
