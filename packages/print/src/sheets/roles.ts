// Role cards to cut out: who does what in a group.

import type { Block, Row } from '../flow/blocks.ts';
import type { SheetContext } from './context.ts';
import { cautionsBox, titleOf } from './head.ts';
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

/** Where nobody carries pieces somebody speaks for the group. */
function cardsOf(context: SheetContext): Block {
  const second: Role = context.challenge.supply === null ? 'speaker' : 'carrier';
  const pairs: readonly (readonly Role[])[] = [
    ['builder', second],
    ['measurer', 'recorder'],
    ['keeper', 'judge'],
  ];
  const rows = pairs.map((pair): Row => ({ cells: pair.map((role) => cardOf(role, context)), leastMm: CARD_MM }));
  return { kind: 'table', rules: 'cut', columns: [{ share: 1 }, { share: 1 }], rows };
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
