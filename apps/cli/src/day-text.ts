// The whole day: places over all challenges, what each challenge brought, or that it was not played yet, how many results
// there are.

import type { ClassRecord, ClassScore } from '@cairnmark/engine';
import type { DayStanding } from '@cairnmark/scoring';
import type { TerminalWords } from '@cairnmark/words';
import { tableText } from './table.ts';

export function dayText(
  { day: rule, challenges, groups }: ClassRecord,
  { day, reports }: ClassScore,
  words: TerminalWords,
): string {
  const nameOf = (group: string): string => groups.find(({ id }) => id === group)?.name ?? group;
  const valueOf = (value: number | null | undefined): string =>
    value === null || value === undefined ? words.say('score.no-result') : words.dayValue(rule, value);
  const resultOf = ({ results }: DayStanding, id: string): string =>
    reports.get(id)?.length === 0
      ? words.say('score.not-played')
      : valueOf(results.find(({ challenge }) => challenge === id)?.counts);
  const header = [
    words.say('column.place'),
    words.say('column.group'),
    words.say('column.total'),
    ...challenges.map(({ name }) => name),
    words.say('column.results'),
  ];
  const rows = day.map((standing) => [
    standing.place === null ? '' : words.ordinal(standing.place),
    nameOf(standing.group),
    valueOf(standing.total),
    ...challenges.map(({ id }) => resultOf(standing, id)),
    words.present(standing),
  ]);
  const rightColumns = [0, 2, ...challenges.map((_, k) => k + 3)];
  const nameOfChallenge = (id: string): string => challenges.find((one) => one.id === id)?.name ?? id;
  const head = [words.say('score.day'), ...words.day(rule, nameOfChallenge)].join('\n');
  return `${head}\n${tableText([header, ...rows], rightColumns)}`;
}
