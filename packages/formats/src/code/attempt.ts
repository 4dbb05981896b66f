// An attempt in a code: every key of it, in this order.

import type { Adjustment, Attempt, AttemptState, Decision, Mark, Observed, OwnResult } from '@cairnmark/engine';
import type { Answer } from '@cairnmark/scoring';
import type { BitsIn, BitsOut } from './bits.ts';
import { instant } from './instants.ts';
import { layout } from './layout.ts';
import { number } from './numbers.ts';
import type { Part } from './part.ts';
import { flag, kindOf, list, nullable, optional, record } from './part.ts';
import { decided, measureId } from './tables.ts';
import { letters, word } from './texts.ts';

const who = word('who');

const state = kindOf<AttemptState>(
  {
    stood: record({}),
    'fell-before-measuring': record({}),
    fell: record({ afterSeconds: number('seconds') }),
    'not-taking-part': record({}),
    absent: record({}),
  },
  3,
);

const observed = record<Observed>({
  heightReadingsMm: list(number('height')),
  photoHeightMm: optional(number('height')),
  stoodSeconds: optional(number('seconds')),
});

const mark = record<Mark>({ judge: who, criterion: word('criterion'), mark: number('mark') });

const answer = record<Answer>({ kept: flag, note: optional(letters) });

const answers: Part<Attempt['answers']> = {
  write: (value, out) => entries.write(Object.entries(value), out),
  read: (from) => Object.fromEntries(entries.read(from)),
};

const entries: Part<readonly (readonly [string, Answer])[]> = list({
  write: ([rule, said], out: BitsOut) => {
    letters.write(rule, out);
    answer.write(said, out);
  },
  read: (from: BitsIn) => [letters.read(from), answer.read(from)] as const,
});

const own = record<OwnResult>({ measure: measureId, value: number('own') });

const decision = record<Decision>({
  measure: decided,
  value: number('decided'),
  by: who,
  reason: letters,
  at: instant,
  takenBack: optional(record({ at: instant, reason: letters })),
});

const adjustment = record<Adjustment>({ points: number('points'), by: who, reason: letters, at: instant });

const named = record<Pick<Attempt, 'group' | 'challenge'>>({ group: letters, challenge: letters });

const rest = record<Omit<Attempt, 'id' | 'group' | 'challenge'>>({
  at: instant,
  state,
  layout,
  observed,
  judged: list(mark),
  answers,
  own: list(own),
  decisions: list(decision),
  adjustments: list(adjustment),
  confirmedBy: nullable(who),
  chosen: flag,
});

export const attempt: Part<Attempt> = {
  write: (value, out) => {
    named.write(value, out);
    // Ids begin with challenge and group, unless a file was made elsewhere.
    const isUsual = value.id.startsWith(stemOf(value));
    flag.write(isUsual, out);
    letters.write(isUsual ? value.id.slice(stemOf(value).length) : value.id, out);
    rest.write(value, out);
  },
  read: (from) => {
    const ofWhom = named.read(from);
    const isUsual = flag.read(from);
    const id = letters.read(from);
    return { id: isUsual ? stemOf(ofWhom) + id : id, ...ofWhom, ...rest.read(from) };
  },
};

const stemOf = ({ group, challenge }: Pick<Attempt, 'group' | 'challenge'>): string => `${challenge}-${group}-`;
