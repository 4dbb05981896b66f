// The game sheet of a group: how pieces are earned, what happens on the way, how the game ends; below it the list on which
// the group makes its strokes.

import type { Block } from '../flow/blocks.ts';
import type { TextSize } from '../flow/sizes.ts';
import type { SheetContext } from './context.ts';
import { cautionsBox, groupAndDate, titleOf } from './head.ts';
import { pointsTable } from './points-table.ts';
import { gameRules, ruleSentences } from './rule-sentences.ts';
import type { SheetKind } from './sheet-kind.ts';

export const game: SheetKind = {
  id: 'game',
  reader: 'pupils',
  copyFor: 'group',
  needs: 'supply-game',
  // A kit may have many kinds: the list goes on on the next page.
  mostPages: ({ challenge }) => 1 + Math.ceil(challenge.kit.kinds.length / 20),
  sizes: ['heading', 'body', 'small'],
  blocks: (context, size) => {
    const { say, sayPlan } = context;
    return [
      titleOf('game', context),
      groupAndDate(context),
      { kind: 'heading', size: 'heading', text: sayPlan('challenge.aloud-game') },
      {
        kind: 'list',
        mark: 'point',
        size,
        items: [
          say('print.game-one'),
          say('print.game-stroke'),
          ...gameRules(context),
          say('print.game-crushed'),
          say('print.game-penalty'),
        ],
      },
      ...earnedOf(context, size),
      ...(context.print === 'large' ? [{ kind: 'new-page' as const }] : []),
      strokesTable(context),
      { kind: 'fields', labels: [say('print.game-dropped'), say('print.game-penalties')] },
      cautionsBox(['running'], context),
    ];
  },
};

/** What the supply earns, and what the rules ask of it. */
function earnedOf(context: SheetContext, size: TextSize): readonly Block[] {
  const { challenge, say } = context;
  const rows = challenge.points.filter(({ measure }) => measure.startsWith(EARNED));
  const rules = challenge.requirements.filter(
    (rule) => rule.kind === 'only-earned' || (rule.kind === 'measured' && rule.measure.startsWith(EARNED)),
  );
  return [
    ...(rules.length === 0
      ? []
      : [{ kind: 'list' as const, mark: 'point' as const, size, items: ruleSentences(rules, context) }]),
    ...(rows.length === 0
      ? []
      : [
          { kind: 'paragraph' as const, text: say('print.game-points'), font: 'bold' as const, size },
          pointsTable(rows, size === 'small' ? 'small' : 'body', context),
        ]),
  ];
}

/** What the fact ids of a supply begin with. */
const EARNED = 'earned:';

/** mm. One line of strokes. */
const ROW_MM = 7.5;

const strokesTable = ({ challenge, say }: SheetContext): Block => ({
  kind: 'table',
  rules: 'grid',
  stands: 'middle',
  columns: [{ share: 1.4 }, { share: 2.1 }, { share: 0.85 }, { share: 0.85 }, { share: 0.85 }],
  head: [
    say('print.game-kind'),
    say('print.game-strokes'),
    say('print.game-lost'),
    say('print.game-back'),
    say('print.game-have'),
  ],
  rows: challenge.kit.kinds.map(({ name }) => ({ cells: [name, '', '', '', ''], leastMm: ROW_MM })),
});
