// Every text about results, own results, supplies and what separates builds is reached, in both languages, with nothing
// left open.

import type { ClassPi, Decision, OwnLine, Report, ReportedFact, Slip, WhyLine } from '@cairnmark/engine';
import type { Fact, NotMeasuredReason, Working } from '@cairnmark/geometry';
import type { DayRule, DayWarning, OutReason, PointsRow, Requirement, SupplyRule } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, reportOn } from '../../../tests/reference/small-class.ts';
import type { Catalogue } from './catalogue.ts';
import type { ClassWords } from './class-words.ts';
import { classWords } from './class-words.ts';
import { daySentences, dayValue, presentText, warningSentence } from './day.ts';
import { english } from './en/index.ts';
import { spanish } from './es/index.ts';
import { line, readerWith, rule, watched } from './in-class.ts';
import { gameSentences } from './supplies.ts';
import type { Sides } from './why.ts';

const REPORT: Report = { ...reportOn(attempt()), stockBreaches: [{ kind: 'cube', used: 3, stock: 2 }] };
const FELL: Report = { ...REPORT, state: { kind: 'fell', afterSeconds: 4 } };
const FIVE = rule('pieces', 'exactly', 5);
const BASE = rule('base-area', 'at-most', 2400);
const HIGH = rule('height', 'at-least', 200);
const JUDGED: Requirement = { id: 'r', kind: 'judged', text: 'No tape', consequence: { kind: 'costs', points: 2 } };
const KINDS: Requirement = { id: 'r', kind: 'only-kinds', kinds: ['cube'], consequence: { kind: 'earns', points: 5 } };
const EARNED: Requirement = { id: 'r', kind: 'only-earned', consequence: { kind: 'must' } };
const BREACHES = [{ kind: 'cube', used: 3, allowed: 1 }];
const SIDES: Sides = {
  challenge: challenge({ requirements: [FIVE] }),
  first: { name: 'Puffins', report: REPORT },
  second: { name: 'Terns', report: REPORT },
};
const ROW: PointsRow = {
  id: 'p',
  measure: 'height',
  points: 2,
  per: 10,
  rounding: 'down',
  capPoints: 9,
  floorPoints: 1,
};
const REASONS: readonly NotMeasuredReason[] = [
  'no-layout',
  'traced-outline-only',
  'no-height-read',
  'no-pieces-listed',
  'divisor-zero',
];
const METHODS: readonly Working['method'][] = [
  'sum-of-pieces',
  'highest-point',
  'boundary-walk',
  'hull',
  'count',
  'surface-less-contacts',
  'ratio',
];
const OUT: readonly OutReason[] = [
  { code: 'rule-broken', requirements: ['r'] },
  { code: 'more-than-the-kit-has', kinds: ['cube'] },
  { code: 'absent' },
  { code: 'not-taking-part' },
  { code: 'fell' },
  { code: 'not-confirmed' },
  { code: 'no-attempt' },
  { code: 'not-measured', measures: ['height', 'base-area'] },
];
const SLIPS: readonly Slip[] = [
  'diameter-for-radius',
  'radius-for-diameter',
  'cm-for-mm',
  'third-forgotten',
  'slant-for-height',
  'other-pi',
  'piece-forgotten',
  'contact-counted-once',
  'added-for-subtracted',
];
const PIS: readonly ClassPi[] = ['3', '3.14', '22/7', 'key'];
const OWN: OwnLine = {
  measure: 'volume',
  own: 7000,
  expected: 7100,
  source: 'predicted',
  tolerance: 90,
  verdict: 'agrees',
  slip: null,
  points: 3,
};
const GAMES: readonly SupplyRule[] = [
  { ends: { kind: 'time', seconds: 90 }, handOver: 'at-a-touch', dropped: 'lost-this-turn' },
  { ends: { kind: 'turns', turns: 7 }, handOver: 'once-it-lies', dropped: 'must-be-fetched' },
  { ends: { kind: 'stock-empty' }, handOver: 'as-the-group-likes', dropped: 'carrier-chooses' },
];
const DAY: DayRule = { kind: 'mean-place', placePoints: [7, 5], weights: { tall: 2 }, meanOfThosePresent: true };
const WARNINGS: readonly DayWarning[] = [
  { code: 'points-of-different-units', challenges: ['tall', 'wall'], units: ['mm', 'count'] },
  {
    code: 'judges-of-different-groups',
    challenge: 'tall',
    criterion: 'idea',
    judges: [{ judge: 'Ada', groups: ['terns'] }],
  },
];
const KEY = {
  kind: 'key',
  by: 'height',
  first: 70,
  second: 50,
  ahead: 'first',
  withinError: true,
} as const;
const WHY: readonly (readonly WhyLine[])[] = [
  [
    KEY,
    { kind: 'row', row: 'p', measure: 'height', first: 7, second: 3 },
    { kind: 'requirement', requirement: 'r', verdicts: ['kept', 'broken'], first: 5, second: 0 },
    { kind: 'own-result', measure: 'volume', first: 3, second: 0 },
    { kind: 'fallen', first: 0, second: 3 },
    { kind: 'adjustments', first: 0, second: 3 },
    { kind: 'total', first: 7, second: null },
  ],
  [{ ...KEY, second: null }],
  [{ ...KEY, second: 70, ahead: null }],
  [{ kind: 'total', first: 7, second: 'not-known' }],
];

describe('the texts of results', () => {
  it.each([
    ['English', english],
    ['Spanish', spanish],
  ] as const)('%s: each is reached, and none leaves anything open', (_, words) => {
    const [results, own, supply, why] = [words.results, words.own, words.supply, words.why].map(watched);
    const told = everything({
      ...words,
      results: results?.texts as Catalogue['results'],
      own: own?.texts as Catalogue['own'],
      supply: supply?.texts as Catalogue['supply'],
      why: why?.texts as Catalogue['why'],
    });
    expect([results, own, supply, why].map((one) => [...(one?.used ?? [])].sort())).toEqual(
      [words.results, words.own, words.supply, words.why].map((texts) => Object.keys(texts).sort()),
    );
    for (const sentence of told) expect(sentence).not.toMatch(/^$|[{}]| \?|undefined|NaN|null| {2}|\[object/);
  });
});

function everything(words: Catalogue): readonly string[] {
  const said = classWords({ words, reader: readerWith('half-cm') });
  const names = {
    challenge: (id: string) => id,
    criterion: (_: string, id: string) => id,
    group: (id: string) => id,
  };
  return [
    ...facts(said),
    ...rules(said),
    ...points(said),
    ...[REPORT, FELL].flatMap((report) => OUT.map((reason) => said.out([reason], withLine(report), [FIVE]))),
    ...fallen(said),
    ...said.placeNotes({ sharedWith: ['terns'], withinErrorOf: ['puffins', 'gannets'] }),
    said.order({
      first: { by: 'height', better: 'more', roundTo: 5 },
      tieBreaks: [{ by: 'volume', better: 'less', roundTo: 0 }],
    }),
    ...(['sum-of-points', 'sum-of-place-points', 'mean-place'] as const).flatMap((kind, k) =>
      daySentences({ ...DAY, kind, meanOfThosePresent: k === 0 }, (id) => id, words),
    ),
    dayValue(DAY, 1.5, words),
    presentText({ group: 'terns', place: 1, total: 7, results: [], present: 2, of: 3, sharedWith: [] }, words),
    ...WARNINGS.map((warning) => warningSentence(warning, names, words)),
    ...ownResults(said),
    ...GAMES.flatMap((game) => gameSentences(game, words)),
    ...supplies(said),
    ...WHY.flatMap((lines) => said.why(lines, SIDES)),
    said.takesNoPlace('Terns', said.out([{ code: 'absent' }], null, [])),
    said.change({ fact: 'height', before: 70, after: 50, error: 30, withinError: true }),
    said.change({ fact: 'height', before: null, after: 50, error: 3, withinError: false }),
  ];
}

const withLine = (report: Report): Report => ({ ...report, requirements: [line('broken', 6, FIVE)] });

function facts(said: ClassWords): readonly string[] {
  const predicted: Fact = {
    status: 'measured',
    id: 'height',
    value: 428,
    unit: 'mm',
    tolerance: 1,
    errors: {},
    working: { method: 'highest-point', steps: [], parts: [] },
  };
  const observed = { value: 431, tolerance: 3, readings: [430, 432] };
  const fact: ReportedFact = {
    id: 'height',
    unit: 'mm',
    value: 420,
    tolerance: 3,
    errors: {},
    source: 'decided',
    predicted,
    observed,
    decided: null,
  };
  const missing = REASONS.map((reason): Fact => ({ status: 'not-measured', id: 'height', unit: 'mm', reason }));
  const takenBack = { at: '', reason: 'it did not' };
  const decision: Decision = { measure: 'height', value: 420, by: 'Ms Reid', reason: 'slipped', at: '' };
  return [
    said.fact(fact),
    ...[...missing, null].map((one) => said.fact({ ...fact, value: null, predicted: one })),
    ...said.otherValues(fact),
    ...METHODS.flatMap((method) => said.working({ method, steps: [], parts: [] })),
    said.amount('judged:idea', 3.5, 0),
    said.gap({ at: [-35, 120], widthMm: 1.5 }),
    said.gap({ at: [35, -120], widthMm: 1.5 }),
    said.decision({ decision, state: 'counts', replaces: null }, null),
    said.decision({ decision, state: 'counts', replaces: decision }, fact),
    said.decision({ decision, state: 'replaced', replaces: null }, fact),
    said.decision({ decision: { ...decision, takenBack }, state: 'taken-back', replaces: null }, null),
  ];
}

function rules(said: ClassWords): readonly string[] {
  const unknown = { ...line('not-measured', null, EARNED), measure: 'earned:pieces' };
  return [
    ...[FIVE, BASE, HIGH].flatMap((one) => [
      said.rule(line('kept', 5, one), one, 0),
      said.rule(line('broken', 6, one), one, 0),
      said.rule(line('not-measured', null, one), one, 0),
    ]),
    ...(['kept', 'broken', 'not-judged'] as const).map((verdict) =>
      said.rule({ ...line(verdict, null, JUDGED), note: 'one strip' }, JUDGED, 0),
    ),
    ...[KINDS, EARNED].flatMap((one) => [
      said.rule(line('kept', null, one), one, 0),
      said.rule({ ...line('broken', null, one), breaches: BREACHES }, one, 0),
      said.rule(line('not-measured', null, one), one, 0),
    ]),
    said.rule(unknown, EARNED, 0),
    said.rule({ ...line('not-measured', null, HIGH), consequence: { kind: 'costs', points: 5 } }, HIGH, 0),
    ...[FIVE, BASE, JUDGED, KINDS, EARNED].map(said.statedRule),
    said.stock({ kind: 'cube', used: 3, stock: 2 }),
  ];
}

function points(said: ClassWords): readonly string[] {
  const earned = { row: 'p', measure: 'height', value: 70, times: 7, points: 14, limited: null };
  const counted: PointsRow = { ...ROW, measure: 'faces', per: 1 };
  return [
    said.statedRow(ROW),
    ...[1, 2].map((per) => said.statedRow({ ...ROW, measure: 'judged:idea', per })),
    said.points(earned, ROW, 3),
    said.points(earned, counted, 0),
    said.points({ ...earned, value: 3.5 }, { ...ROW, measure: 'judged:idea', per: 1 }, 0),
    said.points({ ...earned, limited: 'cap' }, ROW, 3),
    said.points({ ...earned, limited: 'floor' }, ROW, 3),
    said.points({ ...earned, value: null, times: null }, ROW, 3),
    said.points({ ...earned, value: null, times: null, points: null }, ROW, 3),
    said.adjustment({ points: -2, by: 'Ms Reid', reason: 'ran indoors', at: '' }),
  ];
}

function fallen(said: ClassWords): readonly string[] {
  const counting = [{ counts: 'out' }, { counts: 'points', points: 5 }, { counts: 'as-measured' }] as const;
  return counting.flatMap((one) => [said.fallen(FELL.state, one) ?? '', said.falling(one)]);
}

function ownResults(said: ClassWords): readonly string[] {
  return [
    ...(['agrees', 'close', 'check-the-working', 'not-measured'] as const).map((verdict) =>
      said.own({ ...OWN, verdict }, 'key'),
    ),
    ...SLIPS.flatMap((slip) => PIS.map((pi) => said.own({ ...OWN, verdict: 'check-the-working', slip }, pi))),
    ...PIS.map((pi) => said.ownExpected(OWN, pi) ?? ''),
    said.ownExpected({ ...OWN, source: 'observed' }, 'key') ?? '',
  ];
}

function supplies(said: ClassWords): readonly string[] {
  const some = {
    group: 'terns',
    pieces: { cube: 3 },
    dropped: 1,
    lost: 2,
    penaltyPoints: 5,
    byRound: [{ round: 1, pieces: 3 }],
    byCarrier: [{ carrier: 'first runner', pieces: 3 }],
  };
  return [...said.supply(some), ...said.supply({ ...some, pieces: {} })];
}
