// The page on which pupils look back on what they built, why it stood and what they would change.

import type { Block } from '../flow/blocks.ts';
import type { TextSize } from '../flow/sizes.ts';
import type { SheetContext } from './context.ts';
import { titleOf } from './head.ts';
import type { SheetKind } from './sheet-kind.ts';

export const reflection: SheetKind = {
  id: 'reflection',
  reader: 'pupils',
  copyFor: 'pupil',
  needs: null,
  mostPages: () => 1,
  sizes: ['heading', 'body'],
  blocks: (context, size) => [
    titleOf('reflection', context),
    { kind: 'fields', labels: [context.say('print.back-group'), context.say('print.date')] },
    ...(context.challenge.gradePreset === 'grades-2-3' ? forYoung(context) : forOlder(context, size)),
  ],
};

/** mm. */
const DRAWING_MM = 75;

/** A drawing and few words. */
const forYoung = ({ say }: SheetContext): readonly Block[] => [
  { kind: 'paragraph', text: say('print.back-drawing'), size: 'large' },
  { kind: 'table', rules: 'grid', columns: [{ share: 1 }], rows: [{ cells: [''], leastMm: DRAWING_MM }] },
  ...(['print.back-well', 'print.back-hard', 'print.back-next'] as const).flatMap((key): readonly Block[] => [
    { kind: 'paragraph', text: say(key), size: 'large' },
    { kind: 'lines', count: 3 },
  ]),
];

const forOlder = ({ print, say }: SheetContext, size: TextSize): readonly Block[] =>
  (
    [
      ['print.back-first', 4],
      ['print.back-stand', 4],
      ['print.back-number', 3],
      ['print.back-fair', 3],
      ['print.back-next', 3],
    ] as const
  ).flatMap(([key, count]): readonly Block[] => [
    { kind: 'paragraph', text: say(key), size },
    { kind: 'lines', count: print === 'large' ? 3 : count },
  ]);
