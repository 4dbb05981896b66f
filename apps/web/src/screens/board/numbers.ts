// All numbers of a challenge's board as one table, for the page and for a spreadsheet. Units stand in the titles; a cell
// without a value is empty.

import type { Report } from '@cairnmark/engine';
import { POINTS_ID } from '@cairnmark/engine';
import type { Cell } from '@cairnmark/formats';
import type { ErrorReach } from '@cairnmark/scoring';
import { numberAndUnit } from '../../parts/number-and-unit.ts';
import { errorOf, hasError } from './bars.ts';
import { keyValue } from './columns.ts';
import type { BoardLine } from './lines.ts';
import { firstValue, isAway, isVoid } from './lines.ts';
import type { PartId } from './parts.ts';
import { partsOf } from './parts.ts';
import type { Scene } from './scene.ts';
import { groupName } from './scene.ts';
import { keyText, notesOf, outText, partText } from './texts.ts';

/** What is read on the page, and what stands in the file. */
export interface NumberCell {
  readonly text: string;
  readonly value: Cell;
}

/** No two columns of a board have one title. */
export interface Column {
  readonly title: string;
  readonly isNumber: boolean;
  readonly cell: (line: BoardLine) => NumberCell;
}

/** `withPlaces`: false while places are hidden, and then nothing else tells them either. */
export function numberColumns(lines: readonly BoardLine[], scene: Scene, withPlaces: boolean): readonly Column[] {
  const { screen } = scene;
  const column = (title: string, isNumber: boolean, cell: Column['cell']): Column => ({ title, isNumber, cell });
  return [
    ...(withPlaces
      ? [column(screen.say('board.place'), true, ({ standing }) => plain(standing.place, String(standing.place ?? '')))]
      : []),
    column(screen.say('board.group'), false, ({ group }) => text(groupName(scene.record, group))),
    column(screen.say('board.try'), true, ({ report, tries }) => {
      const number = report === null || isAway(report) ? null : tries.indexOf(report) + 1;
      return plain(number, String(number ?? ''));
    }),
    ...keyColumns(lines, scene),
    ...partColumns(lines, scene),
    column(screen.say('board.points'), true, ({ report }) => points(report?.total ?? null, scene)),
    column(screen.say('board.notes'), false, (line) => text(notesText(line, scene, withPlaces))),
  ];
}

/** Rows for a spreadsheet, the titles first. */
export const fileRows = (columns: readonly Column[], lines: readonly BoardLine[]): readonly (readonly Cell[])[] => [
  columns.map(({ title }) => title),
  ...lines.map((line) => columns.map(({ cell }) => cell(line).value)),
];

/** What the ranking asks for, in its order, and the error of the first; points have a column of their own. */
function keyColumns(lines: readonly BoardLine[], scene: Scene): readonly Column[] {
  const { challenge, inClass, words, screen } = scene;
  const { first, tieBreaks } = challenge.ranking;
  const unitOf = (by: string) => inClass.unit(by);
  const titled = (title: string, by: string): string => {
    const unit = by === POINTS_ID ? inClass.label(by) : unitOf(by).name;
    return unit === '' ? title : `${title} (${unit})`;
  };
  const measures = [first, ...tieBreaks].filter(({ by }) => by !== POINTS_ID);
  const keys = measures.map(
    (key): Column => ({
      title: titled(words.capital(inClass.label(key.by)), key.by),
      isNumber: true,
      cell: (line) => {
        const value = keyValue(line, key);
        if (value === null || isVoid(line)) return NOTHING;
        return plain(value / unitOf(key.by).size, numberAndUnit(keyText(line, key, 0, scene) ?? '').number);
      },
    }),
  );
  const error = (text: string, of: (reach: ErrorReach) => number): Column => ({
    title: titled(words.capital(text), first.by),
    isNumber: true,
    cell: (line) => {
      const reach = reachOf(line, scene);
      return reach === null ? NOTHING : plain(of(reach) / unitOf(first.by).size, errorText(of(reach), scene));
    },
  });
  const reaches = lines.flatMap((line) => reachOf(line, scene) ?? []);
  if (!reaches.some(hasError)) return keys;
  // Points that go in steps may be off to one side alone.
  return reaches.every(({ below, above }) => below === above)
    ? [...keys, error(screen.say('board.measuring-error'), ({ above }) => above)]
    : [
        ...keys,
        error(screen.say('board.error-below'), ({ below }) => below),
        error(screen.say('board.error-above'), ({ above }) => above),
      ];
}

/** null: there is no value that could be off. */
const reachOf = (line: BoardLine, { challenge }: Scene): ErrorReach | null =>
  line.report === null || isVoid(line) || firstValue(line) === null ? null : errorOf(line.report, challenge);

/** The number alone: the title says of what. */
function errorText(error: number, { challenge, inClass, words }: Scene): string {
  const { by } = challenge.ranking.first;
  if (by === POINTS_ID || error === 0) return words.number(Number(error.toFixed(2)));
  return numberAndUnit(inClass.error(by, error).replace('± ', '')).number;
}

/** One column a part of the points that any build has. */
function partColumns(lines: readonly BoardLine[], scene: Scene): readonly Column[] {
  const { challenge, inClass, words, screen } = scene;
  const has = (id: PartId): boolean => lines.some(({ report }) => partPoints(report, id, scene) !== null);
  const isOnlyRow = (of: string): boolean => challenge.points.filter(({ measure }) => measure === of).length === 1;
  const titles: readonly (readonly [PartId, string])[] = [
    ...challenge.points.map(({ id, measure }): [PartId, string] => [
      `row:${id}`,
      isOnlyRow(measure)
        ? screen.say('board.points-for', { measure: inClass.label(measure) })
        : words.capital(partText(`row:${id}`, scene)),
    ]),
    ['rules', words.capital(screen.say('board.rules'))],
    ['own', words.capital(screen.say('board.own-results'))],
    ['by-hand', words.capital(screen.say('board.by-hand'))],
    ['stated', words.capital(screen.say('board.stated'))],
  ];
  return titles
    .filter(([id]) => has(id))
    .map(([id, title]) => ({
      title,
      isNumber: true,
      cell: ({ report }) => points(partPoints(report, id, scene), scene),
    }));
}

/** A row that was looked at and earned nothing has 0 points; one that was not measured has none. */
function partPoints(report: Report | null, id: PartId, { challenge }: Scene): number | null {
  if (report === null || report.total === null) return null;
  const part = partsOf(report, challenge).find((one) => one.id === id);
  if (part !== undefined) return part.points;
  return report.points.some(({ row, value }) => `row:${row}` === id && value !== null) ? 0 : null;
}

const points = (value: number | null, { words }: Scene): NumberCell =>
  value === null ? NOTHING : plain(value, words.number(value));

function notesText(line: BoardLine, scene: Scene, withPlaces: boolean): string {
  const places = withPlaces ? scene.inClass.placeNotes(line.standing) : [];
  return [...places, outText(line, scene), ...notesOf(line, scene)].filter((note) => note !== '').join('; ');
}

const NOTHING: NumberCell = { text: '', value: null };
const plain = (value: number | null, shown: string): NumberCell => (value === null ? NOTHING : { text: shown, value });
const text = (value: string): NumberCell => (value === '' ? NOTHING : { text: value, value });
