// Guess the rule: a sheet of riddles for the groups, and its answers for the teacher.

import type { RiddleRule, ScoredPiece } from '@cairnmark/scoring';
import type { Block, Cell, Row } from '../flow/blocks.ts';
import type { TextSize } from '../flow/sizes.ts';
import type { SheetContext } from './context.ts';
import { groupAndDate, titleOf } from './head.ts';
import { countedText } from './measuring.ts';
import type { SetRiddle } from './riddles.ts';
import { riddlesOf } from './riddles.ts';
import type { SheetKind } from './sheet-kind.ts';
import { pictureScale, solidPicture } from './solid-picture.ts';

export const riddle: SheetKind = {
  id: 'riddle',
  reader: 'pupils',
  copyFor: 'group',
  needs: null,
  mostPages: () => 2,
  sizes: ['heading', 'body', 'small'],
  blocks: (context, size) => {
    const { say, words } = context;
    const { data, riddles } = riddlesOf(context);
    const things = words.words.listed(data.rows.map(context.inClass.label));
    return [
      titleOf('riddle', context),
      groupAndDate(context),
      { kind: 'paragraph', text: say('print.riddle-how'), size },
      { kind: 'paragraph', text: `${say('print.riddle-things', { things })} ${countedText(context)}`, size: 'small' },
      ...riddles.flatMap((one, k) => askedOf(one, k + 1, data.rows, size, context)),
    ];
  },
};

export const riddleKey: SheetKind = {
  id: 'riddle-key',
  reader: 'teacher',
  copyFor: 'class',
  needs: null,
  mostPages: () => 2,
  sizes: ['body', 'small'],
  blocks: (context, size) => {
    const { data, riddles } = riddlesOf(context);
    return [
      titleOf('riddle-key', context),
      { kind: 'paragraph', text: context.say('print.for-teacher'), font: 'bold' },
      ...riddles.flatMap((one, k) => answerOf(one, k + 1, data.rows, size, context)),
    ];
  },
};

/** mm. */
const PICTURE_MM = 11;
const ROW_MM = 13;
/** In large print a word such as "superficies" needs as much. */
const COUNT_MM = { usual: 24, large: 26 } as const;

function askedOf(
  { family, riddle: asked }: SetRiddle,
  number: number,
  rows: readonly string[],
  size: TextSize,
  context: SheetContext,
): readonly Block[] {
  const { inClass, print, say } = context;
  const head: readonly Block[] = [
    { kind: 'heading', size: 'heading', text: say('print.riddle-number', { number }) },
    { kind: 'paragraph', text: say(`print.riddle-${family}`), size },
  ];
  if (asked === null) return [...head, { kind: 'paragraph', text: say('print.riddle-none'), size }];
  const { examples, check } = asked;
  const line = ({ kind, points }: Pick<ScoredPiece, 'kind'> & { readonly points: number | null }): Row => ({
    cells: [
      pictureOf(kind, context),
      nameOf(kind, context),
      ...rows.map(() => ''),
      points === null ? '?' : numberText(points, context),
    ],
    leastMm: ROW_MM,
  });
  return [
    ...head,
    {
      kind: 'table',
      rules: 'grid',
      size: 'body',
      stands: 'middle',
      columns: [
        { widthMm: PICTURE_MM + 3 },
        { share: 1 },
        ...rows.map(() => ({ widthMm: COUNT_MM[print], align: 'middle' as const })),
        { widthMm: COUNT_MM[print], align: 'middle' },
      ],
      head: ['', say('print.measure-solid'), ...rows.map(inClass.label), say('print.riddle-points')].map(headCell),
      rows: [...examples.map(line), ...(check === null ? [] : [line({ ...check, points: null })])],
    },
    ...(check === null
      ? []
      : [{ kind: 'paragraph' as const, text: say('print.riddle-check'), size: 'small' as const }]),
    { kind: 'fields', labels: [say('print.riddle-rule')] },
  ];
}

const headCell = (text: string): Cell => [{ kind: 'paragraph', text, size: 'small', font: 'bold', align: 'middle' }];

function answerOf(
  { family, onKit, riddle: asked }: SetRiddle,
  number: number,
  rows: readonly string[],
  size: TextSize,
  context: SheetContext,
): readonly Block[] {
  const { say, words } = context;
  const told = (rule: RiddleRule): string => ruleText(rule, rows, context);
  const solids = onKit.examplesForAll.map((kind) => nameOf(kind, context));
  const [[one, other] = []] = onKit.alike;
  const points = (value: number): string => words.words.counted('points', value);
  const lines = [
    ...(asked === null ? [say('print.riddle-none')] : [say('print.riddle-answer', { rule: told(asked.rule) })]),
    ...(asked?.check == null
      ? []
      : [say('print.riddle-last', { solid: nameOf(asked.check.kind, context), points: points(asked.check.points) })]),
    ...(asked === null ? [] : [say('print.riddle-own', { solids: words.words.listed(solids) })]),
    ...(one === undefined || other === undefined
      ? []
      : [say('print.riddle-alike', { one: told(one), other: told(other) })]),
  ];
  return [
    { kind: 'heading', size: 'heading', text: say('print.riddle-number', { number }) },
    { kind: 'paragraph', text: say(`print.riddle-${family}`), size },
    { kind: 'list', mark: 'point', items: lines, size },
  ];
}

/** "2 points for every face and 1 point for the piece itself"; what gives comes before what takes. */
function ruleText({ rates, each }: RiddleRule, rows: readonly string[], { inClass, say, words }: SheetContext): string {
  const given = rows.map((row, j) => ({ row, rate: rates[j] ?? 0 })).filter(({ rate }) => rate !== 0);
  const parts = [...given].sort((a, b) => Math.sign(b.rate) - Math.sign(a.rate));
  const points = (value: number): string => words.words.counted('points', value);
  return words.words.listed([
    // The noun alone: "1 face" without its number.
    ...parts.map(({ row, rate }) =>
      say('print.riddle-each', { points: points(rate), thing: inClass.exactAmount(row, 1).replace(/^1\s/u, '') }),
    ),
    ...(each === 0 ? [] : [say('print.riddle-itself', { points: points(each) })]),
  ]);
}

function pictureOf(kind: string, { solids }: SheetContext): Cell {
  const solid = solids.get(kind);
  return solid === undefined ? '' : [solidPicture(solid, pictureScale(solids.values(), PICTURE_MM), PICTURE_MM)];
}

const nameOf = (kind: string, { challenge }: SheetContext): string =>
  challenge.kit.kinds.find(({ id }) => id === kind)?.name ?? kind;

const numberText = (value: number, { words }: SheetContext): string => words.words.number(value);
