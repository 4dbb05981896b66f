// Our verdict on a stack beside what the simulation makes of it.

import type { LaidPiece, SolidSpec, Stability, StabilityQuestion, Verdict } from '@cairnmark/geometry';
import { massOf, noTabs } from '@cairnmark/geometry';
import { HIGHS } from '../highs.ts';
import { judged, LIMITS, question, SHELL } from '../judged-builds.ts';
import { stackOf } from '../stacked-builds.ts';
import type { Build } from './bodies.ts';
import { KIT, kindOf, TABLE_FRICTION } from './kit.ts';
import { randomStacks } from './random-stacks.ts';
import type { Outcome } from './world.ts';
import { simulate } from './world.ts';

/** What we say of a stack, from the best to the worst. */
export const CLASSES = [
  'stands to 10 degrees or more',
  'stands to 3 to 10 degrees',
  'stands, by less than 3 degrees',
  'rolls at a touch',
  'falls, one ruler step from standing',
  'falls',
] as const;
export type Class = (typeof CLASSES)[number];

export interface Judged {
  /** Its place among the stacks of the seed. */
  readonly number: number;
  readonly pieces: readonly LaidPiece[];
  readonly said: Stability;
  readonly class: Class;
}

export interface Compared extends Judged {
  readonly simulated: Outcome;
}

export function judgedStacks(seed: number, count: number): readonly Judged[] {
  return randomStacks(seed, count).map((pieces, number) => {
    const said = judgement(pieces);
    return { number, pieces, said, class: classOf(said) };
  });
}

/** Each left to itself on a level table. */
export function comparedStacks(seed: number, count: number): readonly Compared[] {
  return judgedStacks(seed, count).map((stack) => ({ ...stack, simulated: simulate(buildOf(stack.pieces), [0, 0]) }));
}

/** Those of which we say that they bear 3 degrees or more. */
export const bears3Degrees = ({ class: said }: Judged): boolean => said === CLASSES[0] || said === CLASSES[1];
export const isSaidToFall = ({ class: said }: Judged): boolean => said === 'falls';

/** The stack with the substance of its pieces, as the simulation takes it. */
export function buildOf(pieces: readonly LaidPiece[]): Build {
  return {
    stack: stackOf(pieces, asked(pieces, 0).solids),
    massOf: ({ kind, solid }) => massOf(solid, kindOf(kind).material, noTabs),
    frictionOf: (touching) => (touching === 'table' ? TABLE_FRICTION : kindOf(touching.kind).friction),
  };
}

/** Only a stack that falls needs the search for a move: whether one ruler step in any direction holds it. */
function judgement(pieces: readonly LaidPiece[]): Stability {
  const said = judged(asked(pieces, 0));
  return said.stands === true ? said : judged(asked(pieces, DIRECTIONS * pieces.length));
}

const DIRECTIONS = 4;

const SPECS: Readonly<Record<string, SolidSpec>> = Object.fromEntries(
  Object.entries(KIT).map(([name, { spec }]) => [name, spec]),
);
const STUFF = new Map(
  Object.entries(KIT).map(([name, { material, friction }]) => [
    name,
    { material, surface: { material: name, friction } },
  ]),
);

function asked(pieces: readonly LaidPiece[], trials: number): StabilityQuestion {
  const table = { material: 'table', friction: TABLE_FRICTION };
  const more = { stuff: STUFF, table, solver: HIGHS, limits: { ...LIMITS, trials } };
  return question(pieces, SPECS, SHELL, TABLE_FRICTION, more);
}

/** Throws when it has no answer: then this comparison would leave the stack out. */
function classOf({ verdict, stands }: Stability): Class {
  const classes: Partial<Record<Verdict, Class>> = {
    steady: 'stands to 10 degrees or more',
    wobbly: 'stands to 3 to 10 degrees',
    'too-close-to-call': stands === true ? 'stands, by less than 3 degrees' : 'falls, one ruler step from standing',
    'rolls-at-a-touch': 'rolls at a touch',
    falls: 'falls',
  };
  const found = classes[verdict];
  if (found === undefined) throw new Error(`no class for the verdict ${verdict}`);
  return found;
}
