// A small class for the tests of the engine: two kinds of box, one challenge, attempts written in a few words.
// Lengths mm. A slab is 60 x 40 x 30 and stands 30 high on its base; a cube of 50 has 125 000 mm3.

import type { Attempt, Challenge, ClassRecord, Group, Kit, Report, Statics } from '@cairnmark/engine';
import { evaluate, USUAL_LIMITS } from '@cairnmark/engine';
import type { LaidPiece, Layout } from '@cairnmark/geometry';
import { CONTACT_MM, noTabs } from '@cairnmark/geometry';
import type { SupplyEvent } from '@cairnmark/scoring';

const PAPER = { kind: 'folded-paper', gramsPerM2: 160, base: 'closed', printedNet: true } as const;

export const KIT: Kit = {
  id: 'small-kit',
  name: 'Two boxes',
  kinds: [
    {
      id: 'slab',
      name: 'Slab',
      solid: { solid: 'rectangular-prism', sizes: { length: 60, width: 40, height: 30 } },
      stock: 3,
      material: PAPER,
      surface: 'paper',
      friction: 0.4,
    },
    {
      id: 'cube',
      name: 'Cube',
      solid: { solid: 'cube', sizes: { edge: 50 } },
      stock: 2,
      material: PAPER,
      surface: 'paper',
      friction: 0.4,
    },
  ],
  frictions: [],
};

/** Highest wins; 2 points for each whole cm of height. */
export function challenge(changes: Partial<Challenge> = {}): Challenge {
  return {
    id: 'tall',
    name: 'Tall',
    kit: KIT,
    gradePreset: 'grades-4-5',
    ruler: 'mm',
    counting: 'flat-and-curved-apart',
    base: 'outline-of-pieces-on-table',
    gapAllowanceMm: CONTACT_MM,
    slackMm: 0,
    heightCounts: ['ruler', 'photo', 'model'],
    measuringErrorMm: 3,
    criteria: [],
    points: [{ id: 'tall-row', measure: 'height', points: 2, per: 10, rounding: 'down' }],
    requirements: [],
    ranking: { first: { by: 'height', better: 'more', roundTo: 1 }, tieBreaks: [] },
    attemptCounts: 'best',
    fallen: { counts: 'out' },
    own: { pi: 'key', closeShare: 0.05, rewards: [] },
    supply: null,
    hidden: [],
    labels: [],
    ...changes,
  };
}

/** A cube on a slab, 80 mm high: it stood and is confirmed. */
export function attempt(changes: Partial<Attempt> = {}): Attempt {
  return {
    id: 'first-try',
    group: 'terns',
    challenge: 'tall',
    at: '2026-03-05T10:20:00+01:00',
    state: { kind: 'stood' },
    layout: laid('slab', 'cube'),
    observed: { heightReadingsMm: [] },
    judged: [],
    answers: {},
    own: [],
    decisions: [],
    adjustments: [],
    confirmedBy: 'teacher',
    chosen: false,
    ...changes,
  };
}

export const group = (id: string, measured: Group['measured'] = {}): Group => ({ id, name: id, measured });

/** Pieces one on the other, all centred. */
export function laid(...kinds: readonly string[]): Layout {
  return {
    kind: 'laid-out',
    pieces: kinds.map((kind): LaidPiece => ({ kind, resting: 'base', xMm: 0, yMm: 0, turnRad: 0 })),
  };
}

export const numbersOnly = (...pieces: readonly string[]): Layout => ({ kind: 'numbers-only', pieces });

/** Without a solver: the builds of these tests are small. */
export const STATICS: Statics = { solver: null, limits: USUAL_LIMITS, tabsOf: noTabs };

/** The report on an attempt. A refusal is an error of the test. */
export function reportOn(
  one: Attempt,
  at: Challenge = challenge(),
  by: Group = group(one.group),
  events: readonly SupplyEvent[] = [],
): Report {
  const evaluated = evaluate(one, { challenge: at, group: by, events }, STATICS);
  if (!evaluated.ok) throw new Error(`refused: ${JSON.stringify(evaluated.issues)}`);
  return evaluated.value;
}

export function classOf(changes: Partial<ClassRecord>): ClassRecord {
  return {
    name: 'Small class',
    invented: true,
    groups: [group('terns'), group('puffins')],
    challenges: [challenge()],
    attempts: [],
    supplies: {},
    day: { kind: 'sum-of-points', placePoints: [], weights: {}, meanOfThosePresent: false },
    ...changes,
  };
}
