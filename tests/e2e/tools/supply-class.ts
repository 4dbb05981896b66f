// The demo class with one more challenge, Lamp Run: its pieces are earned in a game, and nobody has built there yet.

import { demoClass } from '@cairnmark/demo';
import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import type { PointsRow, SupplyEvent, SupplyRule } from '@cairnmark/scoring';
import type { Page } from 'playwright-core';
import { chooseFile, onScreen, openScreen } from './classes.ts';

/** From Start: opens it on Supply. `ends` null: no game is set. */
export async function openSupply(
  page: Page,
  ends: SupplyRule['ends'] | null = { kind: 'time', seconds: 300 },
  strokes: readonly SupplyEvent[] = STROKES,
): Promise<void> {
  await chooseFile(page, 'class.json', supplyClass(ends, strokes));
  await onScreen(page, 'build');
  await openScreen(page, 'supply');
  await page.locator('.supply').waitFor();
}

function supplyClass(ends: SupplyRule['ends'] | null, strokes: readonly SupplyEvent[]): string {
  const demo = demoClass();
  const [first] = demo.challenges;
  if (first === undefined) throw new RangeError('the demo has no challenge');
  const record: ClassRecord = {
    ...demo,
    challenges: [lampRun(first, ends), ...demo.challenges],
    supplies: ends === null ? {} : { 'lamp-run': strokes },
  };
  return encode('class', record);
}

function lampRun(like: Challenge, ends: SupplyRule['ends'] | null): Challenge {
  const kinds = like.kit.kinds.map((kind) => (kind.id === 'cylinder' ? { ...kind, crushed: kind.stock } : kind));
  const named = { ...like, id: 'lamp-run', name: 'Lamp Run', supply: null, kit: { ...like.kit, kinds } };
  if (ends === null) return named;
  return {
    ...named,
    supply: { ends, handOver: 'at-a-touch', dropped: 'must-be-fetched' },
    points: [...like.points, row('pieces', 1), row('faces', 1), row('full-sets', 10), row('penalties', -1)],
    requirements: [...like.requirements, { id: 'only-earned', kind: 'only-earned', consequence: { kind: 'must' } }],
  };
}

const row = (of: string, points: number): PointsRow => ({
  id: `earned-${of}`,
  measure: `earned:${of}`,
  points,
  per: 1,
  rounding: 'none',
});

const earned = (piece: string, count: number): SupplyEvent['what'] => ({ kind: 'earned', piece, count });

/** The class has 12 cubes and 6 cones; all cylinders are crushed. */
const WHAT: readonly (readonly [group: string, what: SupplyEvent['what'], more?: Partial<SupplyEvent>])[] = [
  ['puffins', earned('cube', 3), { carrier: 'carrier 1' }],
  ['puffins', earned('cuboid', 2)],
  ['puffins', earned('cone', 1), { takenBack: true }],
  ['puffins', earned('cube', 4), { round: 2 }],
  ['puffins', { kind: 'lost', piece: 'cube', count: 1, reason: 'crushed' }, { round: 2 }],
  ['puffins', { kind: 'dropped', piece: 'cone', count: 1 }, { round: 2 }],
  ['puffins', { kind: 'penalty', points: 2, reason: 'started too early' }, { round: 2 }],
  ['terns', earned('cube', 4)],
  ['terns', earned('cone', 6)],
];

const STROKES: readonly SupplyEvent[] = WHAT.map(
  ([group, what, more], k): SupplyEvent => ({ id: `stroke-${k + 1}`, group, what, round: 1, ...more }),
);
