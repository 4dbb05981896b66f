// The rows of the day: place, group, what each challenge brought, and all together.

import type { DayStanding } from '@cairnmark/scoring';
import type { DayScene } from './day.ts';
import { dayChallenges } from './day.ts';
import { DayRow } from './day-row.tsx';
import { HeadCells } from './row-head.tsx';
import { rowSizes } from './row-sizes.ts';
import type { Rows } from './use-rows.ts';

export function DayTable({
  scene,
  rows,
  ask,
}: {
  readonly scene: DayScene;
  readonly rows: Rows<DayStanding>;
  readonly ask: ((group: string) => void) | null;
}) {
  const { record, screen, words } = scene;
  const challenges = dayChallenges(scene);
  const page = rows.pages[rows.page] ?? [];
  const names = record.groups.map(({ name }) => name);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys too
    <section className="board-scrolls" data-scrolls tabIndex={0} aria-label={screen.say('board.day')}>
      <table
        className={rows.dense ? 'rank-table day-table rank-dense' : 'rank-table day-table'}
        style={rowSizes(page.length, names)}
      >
        <thead>
          <tr>
            <HeadCells placesHidden={rows.placesHidden} />
            {challenges.map(({ id, name }) => (
              <th key={id} scope="col" className="day-result">
                {name}
                {weightOf(id) !== 1 && (
                  <small className="day-weight">
                    {screen.say('board.times', { times: words.number(weightOf(id)) })}
                  </small>
                )}
              </th>
            ))}
            <th scope="col" className="rank-first">
              {screen.say('board.together')}
            </th>
          </tr>
        </thead>
        <tbody>
          {page.map((standing) => (
            <DayRow key={standing.group} standing={standing} scene={scene} rows={rows} ask={ask} />
          ))}
        </tbody>
      </table>
    </section>
  );

  function weightOf(challenge: string): number {
    return Object.hasOwn(record.day.weights, challenge) ? (record.day.weights[challenge] ?? 1) : 1;
  }
}
