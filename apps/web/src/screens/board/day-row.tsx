// One group of the day: its place, what each challenge brought to it, and all together.

import type { DayStanding } from '@cairnmark/scoring';
import { decimalsOf } from '../../parts/decimals.ts';
import type { DayScene } from './day.ts';
import { dayChallenges, mostOf, resultOf, tellsPlaces, withoutText } from './day.ts';
import { RowHead, UnshownRow } from './row-head.tsx';
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
  const { record, score, screen } = scene;
  const challenges = dayChallenges(scene);
  if (!rows.isShown(standing)) return <UnshownRow cells={challenges.length + 2} />;
  return (
    <tr className={standing.place === null ? 'rank-gone' : undefined}>
      <RowHead
        row={standing}
        rows={score.day}
        name={groupName(record, standing.group)}
        placesHidden={rows.placesHidden}
        ask={ask}
      />
      {challenges.map(({ id, name: challenge }) => (
        <DayResult
          key={id}
          standing={standing}
          challenge={id}
          title={challenge}
          scene={scene}
          placesHidden={rows.placesHidden}
        />
      ))}
      <td className="rank-first" data-title={screen.say('board.together')}>
        <Total standing={standing} scene={scene} placesHidden={rows.placesHidden} />
      </td>
    </tr>
  );
}

function Total({
  standing,
  scene,
  placesHidden,
}: {
  readonly standing: DayStanding;
  readonly scene: DayScene;
  readonly placesHidden: boolean;
}) {
  const { score, screen, words } = scene;
  const { total } = standing;
  if (total === null) return <small>{screen.say('board.present', { present: words.present(standing) })}</small>;
  if (placesHidden && tellsPlaces(scene)) return <small className="mut">{screen.say('board.hidden')}</small>;
  return words.number(total, decimalsOf(score.day.flatMap((one) => one.total ?? [])));
}

function DayResult({
  standing,
  challenge,
  title,
  scene,
  placesHidden,
}: {
  readonly standing: DayStanding;
  readonly challenge: string;
  readonly title: string;
  readonly scene: DayScene;
  readonly placesHidden: boolean;
}) {
  const value = resultOf(standing, challenge);
  if (value === null) {
    return (
      <td className="day-result mut" data-title={title}>
        {withoutText(standing.group, challenge, scene)}
      </td>
    );
  }
  if (placesHidden && tellsPlaces(scene)) {
    return (
      <td className="day-result mut" data-title={title}>
        {scene.screen.say('board.hidden')}
      </td>
    );
  }
  const all = scene.score.day.flatMap((one) => resultOf(one, challenge) ?? []);
  const isMost = !placesHidden && value === mostOf(challenge, scene);
  return (
    <td className={isMost ? 'day-result day-most' : 'day-result'} data-title={title}>
      <span className="day-value">
        {scene.words.number(value, decimalsOf(all))}
        {isMost && <small> {scene.screen.say('board.most')}</small>}
      </span>
    </td>
  );
}
