// The record sheet for a lesson without tablets. Its columns are those of the screen of that name, so that it can be typed
// in afterwards row by row; below it the marks of a judge.

import type { AttemptState } from '@cairnmark/engine';
import type { Block, Column } from '../flow/blocks.ts';
import type { TextSize } from '../flow/sizes.ts';
import type { SheetContext } from './context.ts';
import { cautionsBox, titleOf } from './head.ts';
import { pagesOf } from './pages-of.ts';
import type { SheetKind } from './sheet-kind.ts';
import { workedOut } from './worked-out.ts';

/** Groups on one page. */
const ROWS = 8;

/** mm. The lower where both tables would not share a page. */
const ROW_MM = { body: 9, small: 8 } as const;

const rowMm = (size: TextSize): number => (size === 'small' ? ROW_MM.small : ROW_MM.body);

export const record: SheetKind = {
  id: 'record',
  reader: 'teacher',
  copyFor: 'class',
  needs: null,
  mostPages: (context) => {
    const parts = marksIn(context).length;
    const pages = pagesOf(context.record.groups, ROWS).length;
    return pages === 1 && parts <= 1 ? 1 : (1 + parts) * pages;
  },
  sizes: ['body', 'small'],
  blocks: (context, size) => {
    const { say } = context;
    return [
      titleOf('record', context),
      { kind: 'fields', labels: [say('print.record-who')] },
      numbersTable(context, rowMm(size)),
      { kind: 'paragraph', text: `${statesText(context)} ${say('print.record-later')}`, size: 'small' },
      ...workedOut(context),
      ...marksOf(context, rowMm(size)),
      cautionsBox(['tall-towers'], context),
    ];
  },
};

const STATES: readonly AttemptState['kind'][] = ['stood', 'fell-before-measuring', 'fell', 'not-taking-part', 'absent'];
const READINGS = [1, 2, 3];

function numbersTable({ inClass, record: { groups }, say, sayPlan }: SheetContext, leastMm: number): Block {
  const unit = inClass.unit('height').name;
  const head = [
    sayPlan('record-sheet.group'),
    sayPlan('record-sheet.state'),
    ...READINGS.map((number) => say('print.in-unit', { what: sayPlan('record-sheet.reading', { number }), unit })),
    sayPlan('record-sheet.seconds'),
    sayPlan('record-sheet.pieces'),
    say('print.record-seen'),
  ];
  const shares = [1.7, 1, ...READINGS.map(() => 1), 1.1, 1, 1.1];
  return {
    kind: 'table',
    rules: 'grid',
    stands: 'middle',
    size: 'small',
    columns: shares.map((share): Column => ({ share })),
    head,
    rows: pagesOf(groups, ROWS)
      .flat()
      .map((group) => ({
        cells: [group?.name ?? '', ...head.slice(1).map(() => '')],
        leastMm,
      })),
  };
}

/** "1 It stood, 2 Fell before measuring ...": the number goes into the column. */
function statesText({ say, sayScreen }: SheetContext): string {
  const states = STATES.map((state, k) =>
    say('print.record-state-number', { number: k + 1, state: sayScreen(`score-card.state-${state}`) }),
  );
  return say('print.record-states', { states: states.join(', ') });
}

/** What judges mark, then the rules that a person judges, a few for each table. */
function marksIn({ challenge, inClass, words }: SheetContext): readonly (readonly string[])[] {
  const judged = challenge.requirements.filter(({ kind }) => kind === 'judged');
  const heads = [
    ...challenge.criteria.map(({ name }) => name),
    ...judged.map((rule) => words.words.capital(inClass.ruleTitle(rule))),
  ];
  const tables = Math.ceil(heads.length / MARKS_BESIDE);
  return Array.from({ length: tables }, (_, k) => heads.slice(k * MARKS_BESIDE, (k + 1) * MARKS_BESIDE));
}

const MARKS_BESIDE = 4;

function marksOf(context: SheetContext, leastMm: number): readonly Block[] {
  const { print, say } = context;
  const tables = marksIn(context).map((heads) => marksTable(heads, leastMm, context));
  if (tables.length === 0) return [];
  return [
    ...(print === 'large' ? [{ kind: 'new-page' as const }] : []),
    { kind: 'heading', size: 'heading', text: say('print.record-marks') },
    { kind: 'fields', labels: [say('print.record-judge')] },
    ...tables,
  ];
}

const marksTable = (heads: readonly string[], leastMm: number, { record: { groups }, say }: SheetContext): Block => ({
  kind: 'table',
  rules: 'grid',
  stands: 'middle',
  size: 'small',
  columns: [{ share: 1.3 }, ...heads.map(() => ({ share: 1 }))],
  head: [say('print.group'), ...heads],
  rows: pagesOf(groups, ROWS)
    .flat()
    .map((group) => ({ cells: [group?.name ?? '', ...heads.map(() => '')], leastMm })),
});
