// The texts of a row of the board: its values, what is noted beside them, and what its bar is made of.

import { POINTS_ID } from '@cairnmark/engine';
import type { RankingKey } from '@cairnmark/scoring';
import type { Row } from './arrangement.ts';
import type { Beside } from './columns.ts';
import { keyValue, toleranceOf } from './columns.ts';
import type { BoardLine } from './lines.ts';
import { waitingTries } from './lines.ts';
import type { Near } from './near.ts';
import type { PartId } from './parts.ts';
import type { Scene } from './scene.ts';
import { groupName } from './scene.ts';

/** `decimals` of points in this column. */
export function keyText(line: BoardLine, key: RankingKey, decimals: number, scene: Scene): string | null {
  const value = keyValue(line, key);
  return value === null ? null : amountOf(key, value, toleranceOf(line.report, key.by), decimals, scene);
}

export function besideText(line: BoardLine, beside: Beside, decimals: number, scene: Scene): string | null {
  if (beside.kind === 'tie-break') return keyText(line, beside.key, decimals, scene);
  if (beside.kind === 'points') {
    const total = line.report?.total ?? null;
    return total === null ? null : scene.words.number(total, decimals);
  }
  const fact = line.report?.facts.find(({ id }) => id === beside.measure);
  if (fact === undefined || fact.value === null) return null;
  return scene.inClass.amount(fact.id, fact.value, fact.tolerance);
}

/** Points alone, without the word: the column says what they are. */
function amountOf(key: RankingKey, value: number, tolerance: number, decimals: number, scene: Scene): string {
  if (key.by === POINTS_ID) return scene.words.number(value, decimals);
  return key.roundTo > 0
    ? scene.inClass.roundedAmount(key.by, value, key.roundTo)
    : scene.inClass.amount(key.by, value, tolerance);
}

export const columnTitle = (measure: string, { words, inClass }: Scene): string =>
  words.capital(inClass.label(measure));

export const besideTitle = (beside: Beside, scene: Scene): string => {
  if (beside.kind === 'points') return scene.screen.say('board.points');
  return columnTitle(beside.kind === 'fact' ? beside.measure : beside.key.by, scene);
};

/** Why a group takes no place. */
export function outText({ standing, report }: BoardLine, { inClass, challenge }: Scene): string {
  return inClass.out(standing.out, report, challenge.requirements);
}

/** What else to know of a row: which try counts, what people decided, tries that wait. */
export function notesOf(line: BoardLine, scene: Scene): readonly string[] {
  const { report, standing } = line;
  const { challenge, inClass, screen } = scene;
  const fallen = report === null || standing.out.length > 0 ? null : inClass.fallen(report.state, challenge.fallen);
  const settled = line.tries.length - waitingTries(line).length;
  return [
    ...(fallen === null ? [] : [fallen]),
    ...(report !== null && settled > 1 ? [screen.say(`board.${challenge.attemptCounts}-of`, { count: settled })] : []),
    ...waitingNotes(line, scene),
    ...decidedNotes(line, scene),
  ];
}

function waitingNotes(line: BoardLine, { screen }: Scene): readonly string[] {
  const count = waitingTries(line).length;
  if (count === 0) return [];
  return [count === 1 ? screen.say('board.waits-one') : screen.say('board.waits', { count })];
}

function decidedNotes({ report }: BoardLine, { inClass, words, screen }: Scene): readonly string[] {
  const decided = report?.facts.filter((fact) => fact.decided !== null).map(({ id }) => inClass.label(id)) ?? [];
  return [
    ...(decided.length > 0 ? [screen.say('board.decided', { measures: words.listed(decided) })] : []),
    ...((report?.adjustments.length ?? 0) > 0 ? [screen.say('board.by-hand')] : []),
  ];
}

/** "Closer than the ruler can tell: 0.6 points apart", and what stands there where there is no room for it. */
export function nearTexts(
  { upper, lower }: Near,
  line: BoardLine,
  { challenge, inClass, screen }: Scene,
): { readonly long: string; readonly short: string } {
  const { by, roundTo } = challenge.ranking.first;
  const tolerance = toleranceOf(line.report, by);
  const show = (value: number): string =>
    roundTo > 0 ? inClass.roundedAmount(by, value, roundTo) : inClass.amount(by, value, tolerance);
  const short =
    show(upper) === show(lower)
      ? screen.say('board.both', { value: show(upper) })
      : screen.say('board.apart', { apart: show(Math.abs(upper - lower)) });
  return { long: screen.say('board.near', { apart: short }), short };
}

/** The name of a part in the legend: "height, 2 points for every 1 cm". */
export function partText(part: PartId, { challenge, inClass, words, screen }: Scene): string {
  if (part === 'rules' || part === 'by-hand' || part === 'stated') return screen.say(`board.${part}`);
  if (part === 'own') return screen.say('board.own-results');
  const row = challenge.points.find(({ id }) => `row:${id}` === part);
  if (row === undefined) return part;
  const [measure, points] = [inClass.label(row.measure), words.number(row.points)];
  const each = inClass.unit(row.measure).name === '' && row.per === 1;
  if (each) return screen.say('board.row-each', { measure, points });
  return screen.say('board.row', { measure, points, per: inClass.exactAmount(row.measure, row.per) });
}

/** "3rd: Gannets and Terns". */
export function revealedText(
  place: number,
  rows: readonly Row[],
  { record, words, screen }: Pick<Scene, 'record' | 'words' | 'screen'>,
): string {
  const groups = rows.filter((row) => row.place === place).map(({ group }) => group);
  return screen.say('board.revealed', {
    place: words.ordinal(place),
    groups: words.listed(groups.map((group) => groupName(record, group))),
  });
}
