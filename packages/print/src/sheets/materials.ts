// What a class needs for the three lessons: for one group, and added up for all; and which sheets to copy.

import type { Block } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import { copiesOf } from './copies.ts';
import { cautionsBox, titleOf } from './head.ts';
import { isMet } from './needs.ts';
import type { SheetKind } from './sheet-kind.ts';
import { suitsGrade } from './suits-grade.ts';

/** The list of sheets is handed in: it is made of kinds of sheet, and this is one of them. */
export const materialsWith = (sheets: () => readonly SheetKind[]): SheetKind => ({
  id: 'materials',
  reader: 'teacher',
  copyFor: 'class',
  needs: null,
  // A kit may have many bought pieces.
  mostPages: () => 2,
  blocks: (context) => [
    titleOf('materials', context),
    thingsTable(context),
    ...(context.print === 'large' ? [{ kind: 'new-page' as const }] : []),
    { kind: 'heading', size: 'heading', text: context.say('print.need-copies') },
    copiesTable(sheets(), context),
    cautionsBox(['cutting', 'hot-glue'], context),
  ],
});

interface Thing {
  readonly what: string;
  /** null: to be written in; 'shared': fewer than there are groups. */
  readonly group: number | null | 'shared';
  /** In all; without it, what a group needs times the groups. */
  readonly all?: number;
}

function thingsTable(context: SheetContext): Block {
  const { record, say, words } = context;
  const groups = record.groups.length;
  const text = (count: Thing['group']): string => {
    if (count === 'shared') return say('print.need-shared');
    return count === null ? '' : words.words.number(count);
  };
  return {
    kind: 'table',
    rules: 'grid',
    columns: [{ share: 1 }, { widthMm: 34, align: 'right' }, { widthMm: 34, align: 'right' }],
    head: [say('print.need-what'), say('print.need-group'), say('print.need-class', { groups })],
    rows: [...paperOf(context), ...boughtOf(context), ...toolsOf(context)].map(({ what, group, all }) => ({
      cells: [what, text(group), text(all ?? (typeof group === 'number' ? group * groups : null))],
    })),
  };
}

/** One set of nets for each group, and a tenth more (common practice, no source). */
function paperOf({ challenge, netPages, paper, record, say }: SheetContext): readonly Thing[] {
  const papers = challenge.kit.kinds.flatMap(({ material }) =>
    material.kind === 'folded-paper' ? [material.gramsPerM2] : [],
  );
  if (papers.length === 0) return [];
  const size = say(`print.paper-${paper}`);
  const what = say('print.need-net-sheets', { paper: size, grams: Math.max(...papers) });
  if (netPages === null) return [{ what, group: null }];
  const spare = Math.ceil(netPages * record.groups.length * SPARE_SHARE);
  return [
    { what, group: netPages },
    { what: say('print.need-spare'), group: null, all: spare },
  ];
}

const SPARE_SHARE = 0.1;

/** What paper does not make: as many as the class has, shared out; where they do not go round, the groups share them. */
function boughtOf({ challenge, record, say }: SheetContext): readonly Thing[] {
  const groups = Math.max(1, record.groups.length);
  return challenge.kit.kinds.flatMap(({ material, name, stock }) =>
    material.kind === 'folded-paper'
      ? []
      : [{ what: say('print.need-made', { kind: name }), group: Math.floor(stock / groups) || 'shared', all: stock }],
  );
}

/** For a group of four to six; a pencil for each pupil. Common practice, no source. */
function toolsOf({ challenge, pupils, record, say }: SheetContext): readonly Thing[] {
  return [
    { what: say('print.need-scissors'), group: 3 },
    { what: say('print.need-glue'), group: 2 },
    { what: say('print.need-tape'), group: 1 },
    { what: say('print.need-rulers'), group: 3 },
    { what: say('print.need-pencils'), group: Math.ceil(pupils / Math.max(1, record.groups.length)), all: pupils },
    { what: say('print.need-tray'), group: 1 },
    { what: say('print.need-squared'), group: 4 },
    { what: say('print.need-clock'), group: 1 },
    ...(challenge.supply === null ? [] : [{ what: say('print.need-game-clock'), group: null, all: 1 }]),
  ];
}

/** The sheets of this challenge; cards with table words are printed once a class is shared. */
function copiesTable(sheets: readonly SheetKind[], context: SheetContext): Block {
  const { challenge, say, words } = context;
  const copied = sheets.filter(({ id, needs }) => {
    if (id === 'materials' || needs === 'table-cards') return false;
    return (needs === null || isMet(needs, context)) && suitsGrade(id, challenge.gradePreset);
  });
  return {
    kind: 'table',
    rules: 'grid',
    size: 'small',
    columns: [{ share: 1 }, { widthMm: 40 }, { widthMm: 30, align: 'right' }],
    head: [say('print.need-sheet'), say('print.need-copy-for'), say('print.need-how-many')],
    rows: copied.map(({ id, copyFor }) => ({
      cells: [
        say(`print.sheet-${id}`),
        say(`print.copy-for-${copyFor}`),
        words.words.number(copiesOf(copyFor, context)),
      ],
    })),
  };
}
