// Three lessons on one page, for the teacher or whoever stands in: make, earn, build; what to talk about; what to take care of.

import type { Block, Row } from '../flow/blocks.ts';
import type { TextSize } from '../flow/sizes.ts';
import type { SheetContext } from './context.ts';
import { cautionsBox, titleOf } from './head.ts';
import type { Steps } from './lesson-steps.ts';
import { BUILD, EARN, MAKE, SHARE, stepText } from './lesson-steps.ts';
import { readAloud } from './rule-sentences.ts';
import type { SheetKind } from './sheet-kind.ts';

export const lessonPlan: SheetKind = {
  id: 'lesson-plan',
  reader: 'teacher',
  copyFor: 'class',
  needs: null,
  // For a challenge with many rules: those of the demo and the ready ones take one.
  mostPages: () => 2,
  sizes: ['body', 'small'],
  blocks: (context, size) => [
    titleOf('lesson-plan', context),
    { kind: 'paragraph', text: classText(context) },
    lessonsTable(size, context),
    { kind: 'heading', size: 'heading', text: context.sayPlan('challenge.aloud') },
    aloud(context),
    { kind: 'heading', size: 'heading', text: context.say('print.plan-talk') },
    { kind: 'list', mark: 'point', size, items: TALK.map((key) => context.say(key)) },
    cautionsBox(['cutting', 'hot-glue', 'running', 'tall-towers', 'photos', 'stands-or-falls'], context),
  ],
};

function classText({ challenge, pupils, record, say, words }: SheetContext): string {
  return say('print.plan-class', {
    groups: record.groups.length,
    pupils,
    grade: words.words.capital(words.words.names.grades[challenge.gradePreset]),
    kit: challenge.kit.name,
  });
}

/** Side by side, for they are short; in large print one below the other. */
function aloud(context: SheetContext): Block {
  const { rules, points } = readAloud(context);
  const list = (items: readonly string[]): readonly Block[] =>
    items.length === 0 ? [] : [{ kind: 'list', mark: 'point', size: 'small', items }];
  const parts = context.print === 'large' ? [[...list(rules), ...list(points)]] : [list(rules), list(points)];
  return {
    kind: 'columns',
    columns: parts.filter((blocks) => blocks.length > 0).map((blocks) => ({ share: 1, blocks })),
  };
}

const TALK = [
  'print.plan-talk-forces',
  'print.plan-talk-stand',
  'print.plan-talk-fair',
  'print.plan-talk-error',
  'print.plan-talk-change',
] as const;

function lessonsTable(size: TextSize, context: SheetContext): Block {
  const { challenge, say } = context;
  const isGame = challenge.supply !== null;
  const second = say(isGame ? 'print.plan-earn' : 'print.plan-share');
  const ready = say(isGame ? 'print.plan-earn-ready' : 'print.plan-share-ready');
  return {
    kind: 'table',
    rules: 'grid',
    size,
    columns: [{ share: 0.7 }, { share: 3.4 }, { share: 1.1 }],
    head: [say('print.plan-lesson'), say('print.plan-do'), say('print.plan-ready')],
    rows: [
      lessonRow(say('print.plan-make'), MAKE, say('print.plan-make-ready'), size, context),
      lessonRow(second, isGame ? EARN : SHARE, ready, size, context),
      lessonRow(say('print.plan-build'), BUILD, say('print.plan-build-ready'), size, context),
    ],
  };
}

function lessonRow(name: string, steps: Steps, ready: string, size: TextSize, context: SheetContext): Row {
  const { say, words } = context;
  const sum = steps.reduce((total, [minutes]) => total + minutes, 0);
  const items = steps.map(([minutes, key]) =>
    say('print.plan-step', { minutes: words.words.counted('minutes', minutes), step: stepText(key, context) }),
  );
  const first: readonly Block[] = [
    { kind: 'paragraph', text: name, font: 'bold', size },
    { kind: 'paragraph', text: words.words.counted('minutes', sum), size: 'small' },
  ];
  return { cells: [first, [{ kind: 'list', mark: 'point', size, items }], ready] };
}
