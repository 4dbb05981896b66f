// One group of the day: its place, what each challenge brought to it, and all together.

import type { DayStanding } from '@cairnmark/scoring';
import { sharers } from './arrangement.ts';
import { decimalsOf } from './columns.ts';
import type { DayScene } from './day.ts';
import { dayChallenges, mostOf, resultOf, withoutText } from './day.ts';
import { groupName } from './scene.ts';
import type { Rows } from './use-rows.ts';

export function DayRow({
  standing,
  scene,
  rows,
  ask,
}: {
  readonly standing: DayStanding;
  readonly scene: DayScene;
  readonly rows: Rows<DayStanding>;
  readonly ask: ((group: string) => void) | null;
}) {
  const { record, score, screen, words } = scene;
  const challenges = dayChallenges(scene);
  if (!rows.isShown(standing)) {
    return (
      <tr className="rank-unshown">
        <td className="rank-place" />
        <th scope="row" colSpan={challenges.length + 2}>
          {screen.say('board.not-shown')}
        </th>
      </tr>
    );
  }
  const decimals = decimalsOf(score.day.flatMap(({ total }) => total ?? []));
  const name = groupName(record, standing.group);
  return (
    <tr className={standing.place === null ? 'rank-gone' : undefined}>
      {!rows.placesHidden && (
        <td className="rank-place">
          {standing.place ?? '–'}
          {sharers(standing, score.day) > 1 && <small> {screen.say('board.shared')}</small>}
        </td>
      )}
      <th scope="row" className="rank-name">
        {ask === null || standing.place === null ? (
          name
        ) : (
          <button type="button" aria-haspopup="dialog" onClick={() => ask(standing.group)}>
            {name}
            <span className="vh">, {screen.say('board.why', { place: words.ordinal(standing.place) })}</span>
          </button>
        )}
      </th>
      {challenges.map(({ id, name: challenge }) => (
        <DayResult key={id} standing={standing} challenge={id} title={challenge} scene={scene} />
      ))}
      <td className="rank-first" data-title={screen.say('board.together')}>
        {standing.total === null ? (
          <small>{screen.say('board.present', { present: words.present(standing) })}</small>
        ) : (
          words.number(standing.total, decimals)
        )}
      </td>
    </tr>
  );
}

function DayResult({
  standing,
  challenge,
  title,
  scene,
}: {
  readonly standing: DayStanding;
  readonly challenge: string;
  readonly title: string;
  readonly scene: DayScene;
}) {
  const value = resultOf(standing, challenge);
  if (value === null) {
    return (
      <td className="day-result mut" data-title={title}>
        {withoutText(standing.group, challenge, scene)}
      </td>
    );
  }
  const all = scene.score.day.flatMap((one) => resultOf(one, challenge) ?? []);
  const isMost = value === mostOf(challenge, scene);
  return (
    <td className={isMost ? 'day-result day-most' : 'day-result'} data-title={title}>
      <span className="day-value">
        {scene.words.number(value, decimalsOf(all))}
        {isMost && <small> {scene.screen.say('board.most')}</small>}
      </span>
    </td>
  );
}
