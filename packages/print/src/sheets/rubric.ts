// The sheet of a judge: what is marked from 0 to 4, and the rules that a person says yes or no to.

import type { Block, Column } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import { titleOf } from './head.ts';
import type { SheetKind } from './sheet-kind.ts';

export const rubric: SheetKind = {
  id: 'rubric',
  reader: 'pupils',
  copyFor: 'group',
  needs: 'marks',
  // For many things to mark; up to six of them take one.
  mostPages: ({ challenge }) => Math.ceil(Math.max(1, challenge.criteria.length) / ROWS[1]) + 1,
  blocks: (context) => {
    const { say } = context;
    return [
      titleOf('rubric', context),
      { kind: 'fields', labels: [say('print.group'), say('print.rubric-judge')] },
      ...marksOf(context),
      ...judgedRules(context),
    ];
  },
};

/** Rows of the table: four, or six where more is marked. */
const ROWS = [4, 6] as const;

/** mm. Room to write what a mark looks like. */
const ROW_MM = [34, 25] as const;

function marksOf(context: SheetContext): readonly Block[] {
  if (context.challenge.criteria.length === 0) return [];
  return [{ kind: 'paragraph', text: context.say('print.rubric-how') }, marksTable(context)];
}

function marksTable({ challenge, say }: SheetContext): Block {
  const { criteria } = challenge;
  const few = criteria.length <= ROWS[0];
  const rows = Math.max(criteria.length, few ? ROWS[0] : ROWS[1]);
  return {
    kind: 'table',
    rules: 'grid',
    columns: [{ share: 1.3 }, ...MARKS.map((): Column => ({ share: 1 }))],
    head: [say('print.rubric-what'), ...MARKS.map((mark) => `${mark}\n${say(`print.rubric-mark-${mark}`)}`)],
    rows: Array.from({ length: rows }, (_, k) => ({
      cells: [nameCell(criteria[k]?.name ?? ''), ...MARKS.map((mark) => String(mark))],
      leastMm: few ? ROW_MM[0] : ROW_MM[1],
    })),
  };
}

const MARKS = [0, 1, 2, 3, 4] as const;

const nameCell = (text: string): string | readonly Block[] =>
  text === '' ? '' : [{ kind: 'paragraph', text, font: 'bold' }];

function judgedRules({ challenge, inClass, say, sayScreen, words }: SheetContext): readonly Block[] {
  const judged = challenge.requirements.filter(({ kind }) => kind === 'judged');
  if (judged.length === 0) return [];
  return [
    {
      kind: 'table',
      rules: 'grid',
      columns: [{ share: 1 }, { widthMm: 26 }, { widthMm: 26 }],
      head: [say('print.rubric-rules'), sayScreen('score-card.kept'), sayScreen('score-card.broken')],
      rows: judged.map((rule) => ({ cells: [words.words.capital(inClass.ruleTitle(rule)), '', ''], leastMm: 9 })),
    },
  ];
}
