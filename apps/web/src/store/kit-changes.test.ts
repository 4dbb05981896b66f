import { scoreClass } from '@cairnmark/engine';
import { faultsOf } from '@cairnmark/formats';
import { describe, expect, it } from 'vitest';
import { STATICS } from '../../../../tests/reference/small-class.ts';
import {
  buildAgainst,
  crushKind,
  measureKind,
  nameKind,
  scalePrinted,
  sidesStay,
  sizeKind,
  stockKind,
  takeAwayKind,
} from './kit-changes.ts';
import { challengeOf, kindOf, played, unplayed } from './kit-for-tests.ts';
import { kitUse } from './kit-scope.ts';
import { backFrom } from './kit-undo.ts';

const TALL = 'tall-light';
const edgeOf = (record: ReturnType<typeof played>, challenge: string) =>
  kindOf(record, 'cube', challenge).solid.sizes['edge'];

describe('for which challenges a kit is used', () => {
  it('the one at work, and every other that nobody has built under', () => {
    const record = unplayed('harbour-wall');
    const use = kitUse(record, challengeOf(record));
    expect(use.locked).toBe(false);
    expect(use.usedBy.map(({ id }) => id)).toEqual([TALL, 'narrow-rock']);
    expect(use.keep.map(({ id }) => id)).toEqual(['harbour-wall']);
    const resized = sizeKind(TALL, 'cube', { edge: 60 })(record);
    expect([TALL, 'narrow-rock', 'harbour-wall'].map((id) => edgeOf(resized, id))).toEqual([60, 60, 50]);
  });

  it('a kit that was built with keeps its sizes, and every result', () => {
    const record = played();
    expect(kitUse(record, challengeOf(record)).locked).toBe(true);
    expect(sizeKind(TALL, 'cube', { edge: 60 })(record)).toBe(record);
    expect(scalePrinted(TALL, 0.97)(record)).toBe(record);
    expect(takeAwayKind(TALL, 'icosahedron')(record)).toBe(record);
  });

  it('a challenge with nothing but copies of builds can be mended, and no other takes its builds along', () => {
    const record = unplayed('narrow-rock');
    const tries = record.attempts.map((one, k) => ({
      ...one,
      id: `copied-${k}`,
      challenge: TALL,
      answers: {},
      judged: [],
    }));
    const copied = { ...record, attempts: [...record.attempts, ...tries] };
    expect(kitUse(copied, challengeOf(copied)).locked).toBe(false);
    const resized = sizeKind(TALL, 'cube', { edge: 60 })(copied);
    expect([TALL, 'narrow-rock', 'harbour-wall'].map((id) => edgeOf(resized, id))).toEqual([60, 50, 60]);
    expect(kitUse(copied, challengeOf(copied, 'harbour-wall')).keep.map(({ id }) => id)).toEqual([TALL, 'narrow-rock']);
  });

  it('a name changes in a played challenge, and leaves the sizes of a follower that went on alone', () => {
    const record = sizeKind('narrow-rock', 'cube', { edge: 60 })(unplayed(TALL));
    const named = nameKind(TALL, 'cube', 'Block')(record);
    expect([TALL, 'narrow-rock'].map((id) => kindOf(named, 'cube', id).name)).toEqual(['Block', 'Block']);
    expect([TALL, 'narrow-rock'].map((id) => edgeOf(named, id))).toEqual([50, 60]);
  });
});

it('a follower whose kit went a way of its own keeps it, and gets the change alone', () => {
  // Changed while groups had built under Narrow Rock; then its builds went with their groups.
  const apart = sizeKind(TALL, 'cone', { diameter: 44, height: 77 })(unplayed('narrow-rock'));
  const record = { ...apart, attempts: [] };
  const after = sizeKind(TALL, 'cube', { edge: 60 })(record);
  expect([TALL, 'narrow-rock'].map((id) => edgeOf(after, id))).toEqual([60, 60]);
  expect(kindOf(after, 'cone', 'narrow-rock').solid).toEqual(kindOf(record, 'cone', 'narrow-rock').solid);
  expect(kindOf(after, 'cone', 'narrow-rock').solid).not.toEqual(kindOf(after, 'cone').solid);
});

describe('how many there are', () => {
  it('never changes an old result', () => {
    const record = played();
    const least = Math.max(
      ...record.attempts
        .filter(({ challenge }) => challenge === TALL)
        .map(
          ({ layout }) => (layout.kind === 'laid-out' ? layout.pieces : []).filter((one) => one.kind === 'cube').length,
        ),
    );
    expect(least).toBeGreaterThan(0);
    expect(buildAgainst(record, TALL, 'cube', least)).toBeNull();
    expect(kindOf(stockKind(TALL, 'cube', least)(record), 'cube').stock).toBe(least);
    expect(buildAgainst(record, TALL, 'cube', least - 1)).toBe(least);
    expect(stockKind(TALL, 'cube', least - 1)(record)).toBe(record);
  });

  it('a crushed and repaired piece is conserved, is the same in every challenge, and changes no report', () => {
    const record = played();
    const crushed = crushKind(TALL, 'cube', 12)(record);
    expect(crushed.challenges.map(({ id }) => kindOf(crushed, 'cube', id).crushed)).toEqual([12, 12, 12]);
    expect(faultsOf('class', crushed)).toEqual([]);
    const reports = (of: typeof record) => {
      const scored = scoreClass({ ...of, attempts: of.attempts.slice(0, 2) }, STATICS);
      return scored.ok ? [...scored.value.reports.values()] : scored.issues;
    };
    expect(reports(crushed)).toEqual(reports(record));
    expect(crushKind(TALL, 'cube', 0)(crushed)).toEqual(record);
    expect(kindOf(crushKind(TALL, 'cube', 13)(record), 'cube').crushed).toBe(12);
  });
});

describe('taking a kind away', () => {
  const record = measureKind('terns', 'icosahedron', { edge: 41 })(unplayed());

  it('takes what groups measured of it along, and the way back brings all of it again', () => {
    const without = takeAwayKind(TALL, 'icosahedron')(record);
    expect(challengeOf(without).kit.kinds.map(({ id }) => id)).not.toContain('icosahedron');
    expect(without.groups.map(({ measured }) => Object.keys(measured))).toEqual([[], [], ['sq-frustum'], [], [], []]);
    expect(faultsOf('class', without)).toEqual([]);
    expect(backFrom(record, without)(without)).toEqual(record);
  });

  it('keeps what groups measured while a played challenge has the kind', () => {
    const some = measureKind('terns', 'icosahedron', { edge: 41 })(unplayed('harbour-wall'));
    const without = takeAwayKind(TALL, 'icosahedron')(some);
    expect(without.groups).toBe(some.groups);
    expect(faultsOf('class', without)).toEqual([]);
  });

  it('takes the frictions of its surface along', () => {
    const surface = (name: string) => (one: (typeof record.challenges)[number]) => ({
      ...one,
      kit: {
        ...one.kit,
        kinds: one.kit.kinds.map((kind) => (kind.id === 'icosahedron' ? { ...kind, surface: name } : kind)),
        frictions: [{ between: [name, 'table'] as const, friction: 0.2 }],
      },
    });
    const waxed = { ...record, challenges: record.challenges.map(surface('wax')) };
    expect(faultsOf('class', waxed)).toEqual([]);
    const without = takeAwayKind(TALL, 'icosahedron')(waxed);
    expect(challengeOf(without).kit.frictions).toEqual([]);
    expect(faultsOf('class', without)).toEqual([]);
  });
});

it('a page printed at 97 % makes every printed kind so much smaller, and no bought one', () => {
  const smaller = scalePrinted(TALL, 0.97)(unplayed());
  expect(kindOf(smaller, 'cube').solid.sizes['edge']).toBe(48.5);
  expect(kindOf(smaller, 'hex-prism').solid.sizes).toMatchObject({ sides: 6 });
  const bought = unplayed().challenges[0]?.kit.kinds.find(({ material }) => material.kind === 'full');
  expect(bought).toBeDefined();
  expect(kindOf(smaller, bought?.id ?? '').solid).toEqual(bought?.solid);
});

it('another number of sides waits until no group has measured the solid, nor built with it', () => {
  expect(sidesStay(unplayed('harbour-wall'), 'hex-prism')).toBe(true);
  expect(sidesStay(unplayed(), 'hex-prism')).toBe(false);
  const record = measureKind('terns', 'hex-prism', { sides: 6, edge: 31, height: 80 })(unplayed());
  expect(sizeKind(TALL, 'hex-prism', { sides: 5, edge: 30, height: 80 })(record)).toBe(record);
  const forgotten = measureKind('terns', 'hex-prism', null)(record);
  expect(
    kindOf(sizeKind(TALL, 'hex-prism', { sides: 5, edge: 30, height: 80 })(forgotten), 'hex-prism').solid.sizes,
  ).toEqual({
    sides: 5,
    edge: 30,
    height: 80,
  });
});

it('the way back leaves alone what was changed since', () => {
  const before = unplayed();
  const after = sizeKind(TALL, 'cube', { edge: 60 })(before);
  const later = nameKind(TALL, 'cube', 'Block')(after);
  expect(backFrom(before, after)(later)).toEqual(later);
});
