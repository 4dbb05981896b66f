// The rule sheet: a challenge as it is read out to the class, for the table of each group.

import type { Block } from '../flow/blocks.ts';
import type { TextSize } from '../flow/sizes.ts';
import { askedFor } from './asked-for.ts';
import type { SheetContext } from './context.ts';
import { cautionsBox, titleOf } from './head.ts';
import { countedText } from './measuring.ts';
import { orderOnPaper } from './order-on-paper.ts';
import { pointsTable } from './points-table.ts';
import { gameRules, ruleSentences } from './rule-sentences.ts';
import { sentence } from './sentence.ts';
import type { SheetKind } from './sheet-kind.ts';

export const rules: SheetKind = {
  id: 'rules',
  reader: 'pupils',
  copyFor: 'group',
  needs: null,
  // For a challenge with many rules: those of the demo and the ready ones take one.
  mostPages: () => 3,
  sizes: ['heading', 'body', 'small'],
  blocks: (context, size) => [
    titleOf('rules', context),
    ...goalOf(context),
    ...requirementsOf(context, size),
    ...pointsOf(context, size),
    ...winsOf(context, size),
    ...gameOf(context, size),
    cautionsBox(['tall-towers', ...(context.challenge.supply === null ? [] : ['running' as const])], context),
  ],
};

const heading = (text: string): Block => ({ kind: 'heading', size: 'heading', text });
const list = (items: readonly string[], size: TextSize): Block => ({ kind: 'list', mark: 'point', items, size });

function goalOf(context: SheetContext): readonly Block[] {
  const order = sentence(orderOnPaper(context), context.words);
  return [heading(context.say('print.rules-goal')), { kind: 'paragraph', text: order, size: 'large' }];
}

/** Those that are measured apart from those that a person judges. */
function requirementsOf(context: SheetContext, size: TextSize): readonly Block[] {
  const { challenge, say, sayPlan } = context;
  const judged = challenge.requirements.filter(({ kind }) => kind === 'judged');
  const measured = challenge.requirements.filter((rule) => !judged.includes(rule));
  const parts = [
    { title: say('print.rules-measured'), items: ruleSentences(measured, context) },
    { title: say('print.rules-judged'), items: ruleSentences(judged, context) },
  ].filter(({ items }) => items.length > 0);
  return [
    heading(sayPlan('challenge.rules')),
    ...(parts.length === 0 ? [{ kind: 'paragraph' as const, text: sayPlan('challenge.no-rules'), size }] : []),
    ...parts.flatMap(({ title, items }): readonly Block[] => [
      { kind: 'paragraph', text: title, font: 'bold', size },
      list(items, size),
    ]),
  ];
}

function pointsOf(context: SheetContext, size: TextSize): readonly Block[] {
  const { challenge, say, sayPlan } = context;
  return [
    heading(sayPlan('challenge.points')),
    challenge.points.length === 0
      ? { kind: 'paragraph', text: say('print.rules-no-points'), size }
      : pointsTable(challenge.points, size, context),
  ];
}

function winsOf(context: SheetContext, size: TextSize): readonly Block[] {
  const { challenge, inClass, say, sayPlan } = context;
  return [
    heading(sayPlan('challenge.aloud-wins')),
    list(
      [
        sayPlan(`challenge.attempt-${challenge.attemptCounts}`),
        inClass.falling(challenge.fallen),
        say('print.rules-ties'),
        ...whatCounts(context),
      ],
      size,
    ),
  ];
}

/** What a measure means in this class, of those that it is asked for. */
function whatCounts(context: SheetContext): readonly string[] {
  const { challenge, say, words } = context;
  const asked = askedFor(challenge);
  const told = (measures: readonly string[], text: string): readonly string[] =>
    measures.some((measure) => asked.has(measure)) ? [text] : [];
  return [
    ...told(['height'], heightText(context)),
    ...told(OF_THE_BASE, say('print.rules-base', { base: words.words.names.base[challenge.base] })),
    ...told(COUNTED, countedText(context)),
  ];
}

/** "Height: read with the ruler. If that is missing: from the photo, else from the drawing." */
function heightText({ challenge, say }: SheetContext): string {
  const [first = '', second, ...others] = challenge.heightCounts.map((source) => say(`print.height-${source}`));
  const height = say('print.rules-height', { source: first });
  if (second === undefined) return height;
  const sources = others.reduce((source, next) => say('print.rules-else', { source, next }), second);
  return `${height} ${say('print.rules-height-else', { sources })}`;
}

const OF_THE_BASE = ['base-area', 'base-perimeter', 'base-width', 'height-to-width'];
const COUNTED = ['faces', 'edges', 'corners', 'earned:faces', 'earned:edges', 'earned:corners'];

function gameOf(context: SheetContext, size: TextSize): readonly Block[] {
  const game = gameRules(context);
  return game.length === 0 ? [] : [heading(context.sayPlan('challenge.aloud-game')), list(game, size)];
}
