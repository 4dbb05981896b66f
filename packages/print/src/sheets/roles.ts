// Role cards to cut out: who does what in a group.

import type { Block, Row } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import { cautionsBox, titleOf } from './head.ts';
import { isMet } from './needs.ts';
import { pagesOf } from './pages-of.ts';
import type { SheetKind } from './sheet-kind.ts';

type Role = 'builder' | 'carrier' | 'speaker' | 'measurer' | 'recorder' | 'keeper' | 'judge';

export const roles: SheetKind = {
  id: 'roles',
  reader: 'pupils',
  copyFor: 'group',
  needs: null,
  mostPages: () => 1,
  blocks: (context) => [
    titleOf('roles', context),
    { kind: 'paragraph', text: context.say('print.roles-how') },
    cardsOf(context),
    cautionsBox(['cutting'], context),
  ],
};

/** mm. Six cards and what stands around them fill a page of Letter. */
const CARD_MM = 64;

function cardsOf(context: SheetContext): Block {
  const rows = pagesOf(rolesIn(context), COLUMNS).map(
    (pair): Row => ({ cells: pair.map((role) => (role === null ? '' : cardOf(role, context))), leastMm: CARD_MM }),
  );
  return { kind: 'table', rules: 'cut', columns: [{ share: 1 }, { share: 1 }], rows };
}

const COLUMNS = 2;

/** At most six. Where nobody carries pieces, or nothing is judged, somebody speaks for the group. */
function rolesIn(context: SheetContext): readonly Role[] {
  const [isGame, isJudged] = [isMet('supply-game', context), isMet('marks', context)];
  return [
    'builder',
    ...(isGame ? ['carrier' as const] : []),
    ...(isGame && isJudged ? [] : ['speaker' as const]),
    'measurer',
    'recorder',
    'keeper',
    ...(isJudged ? ['judge' as const] : []),
  ];
}

const cardOf = (role: Role, { say }: SheetContext): readonly Block[] => [
  { kind: 'paragraph', text: say(`print.role-${role}`), size: 'large', font: 'bold' },
  {
    kind: 'list',
    mark: 'point',
    size: 'heading',
    items: ([1, 2, 3] as const).map((line) => say(`print.role-${role}-${line}`)),
  },
];
