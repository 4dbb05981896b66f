// The day as a table: one column a challenge that counts, and the sum.

import type { Challenge } from '@cairnmark/engine';
import type { Cell } from '@cairnmark/formats';
import type { DayStanding } from '@cairnmark/scoring';
import type { CardWords, Words } from '@cairnmark/words';
import type { Shown } from './scene.ts';
import { groupName } from './scene.ts';

export interface DayScene extends Shown {
  readonly words: Words;
  readonly screen: CardWords;
}

/** Challenges that count in the day, in the order of the class. */
export function dayChallenges({ record, score }: Shown): readonly Challenge[] {
  const counted = new Set(score.day.flatMap(({ results }) => results.map(({ challenge }) => challenge)));
  return record.challenges.filter(({ id }) => counted.has(id));
}

export const resultOf = ({ results }: DayStanding, challenge: string): number | null =>
  results.find((one) => one.challenge === challenge)?.counts ?? null;

/** Results that are places, or points of places: they are hidden with them. */
export const tellsPlaces = ({ record }: Pick<Shown, 'record'>): boolean => record.day.kind !== 'sum-of-points';

/** The highest result of a challenge; null where places are averaged, and where nobody has one. */
export function mostOf(challenge: string, { record, score }: Shown): number | null {
  if (record.day.kind === 'mean-place') return null;
  const results = score.day.flatMap((standing) => resultOf(standing, challenge) ?? []);
  return results.length === 0 ? null : Math.max(...results);
}

/** Why a group has no result in a challenge, in two words. */
export function withoutText(group: string, challenge: string, { score, screen }: DayScene): string {
  const out = score.standings.get(challenge)?.find((standing) => standing.group === group)?.out ?? [];
  const codes = out.map(({ code }) => code);
  if (codes.includes('absent')) return screen.say('board.absent');
  return screen.say(codes.includes('not-taking-part') ? 'board.not-taking-part' : 'board.without');
}

/** Rows for a spreadsheet, the titles first. `withPlaces`: false while places are hidden. */
export function dayRows(
  standings: readonly DayStanding[],
  scene: DayScene,
  withPlaces: boolean,
): readonly (readonly Cell[])[] {
  const { record, screen, words } = scene;
  const challenges = dayChallenges(scene);
  const place = (cell: Cell): readonly Cell[] => (withPlaces ? [cell] : []);
  const told = withPlaces || !tellsPlaces(scene);
  const result = (cells: readonly Cell[]): readonly Cell[] => (told ? cells : []);
  return [
    [
      ...place(screen.say('board.place')),
      screen.say('board.group'),
      ...result([...challenges.map(({ name }) => name), screen.say('board.together')]),
      screen.say('board.results'),
    ],
    ...standings.map((standing): readonly Cell[] => [
      ...place(standing.place),
      groupName(record, standing.group),
      ...result([...challenges.map(({ id }) => resultOf(standing, id)), standing.total]),
      words.present(standing),
    ]),
  ];
}
