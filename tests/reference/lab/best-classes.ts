// Seeded challenges with kits of real solids for the best build: sizes, materials, frictions and rules drawn by lot.

import type { Challenge, KindOfPiece } from '@cairnmark/engine';
import type { BaseDefinition, Material, SolidId } from '@cairnmark/geometry';
import { CATALOGUE } from '@cairnmark/geometry';
import type { MeasuredRule, RankingRule } from '@cairnmark/scoring';
import { seeded } from '../seeded.ts';
import { challenge } from '../small-class.ts';

const IDS = Object.keys(CATALOGUE) as SolidId[];
const MATERIALS: readonly Material[] = [
  { kind: 'full', densityGPerCm3: 0.5 },
  { kind: 'folded-paper', gramsPerM2: 160, base: 'closed', printedNet: true },
  { kind: 'folded-paper', gramsPerM2: 120, base: 'open', printedNet: false },
];
const BASES: readonly BaseDefinition[] = ['outline-of-pieces-on-table', 'contact-patches', 'hull-of-contacts'];
const RANKINGS: readonly RankingRule[] = [
  { first: { by: 'height', better: 'more', roundTo: 1 }, tieBreaks: [] },
  {
    first: { by: 'height', better: 'more', roundTo: 1 },
    tieBreaks: [{ by: 'base-area', better: 'less', roundTo: 1 }],
  },
  { first: { by: 'height-to-width', better: 'more', roundTo: 0.1 }, tieBreaks: [] },
  { first: { by: 'stands-to', better: 'more', roundTo: 0 }, tieBreaks: [] },
  { first: { by: 'points', better: 'more', roundTo: 1 }, tieBreaks: [] },
];

export function seededChallenge(seed: number): Challenge {
  const draw = seeded(seed);
  for (let warm = 0; warm < 3; warm += 1) draw();
  const whole = (from: number, to: number): number => from + Math.floor(draw() * (to - from + 1));
  const oneOf = <T>(list: readonly T[], first: T): T => list[whole(0, list.length - 1)] ?? first;
  const pool = [...IDS];
  const kinds = Array.from({ length: whole(2, 6) }, (_, k): KindOfPiece => {
    const [solid = 'cube'] = pool.splice(whole(0, pool.length - 1), 1);
    const scale = whole(7, 13) / 10;
    const sizes = Object.fromEntries(
      Object.entries(CATALOGUE[solid].example).map(([name, size]) => [name, name === 'sides' ? size : size * scale]),
    );
    const [material, friction] = [oneOf(MATERIALS, { kind: 'full', densityGPerCm3: 0.5 }), whole(2, 7) / 10];
    return {
      id: `k${k}`,
      name: solid,
      solid: { solid, sizes },
      stock: whole(1, 3),
      material,
      surface: `s${k}`,
      friction,
    };
  });
  const must = (id: string, measure: string, comparison: MeasuredRule['comparison'], limit: number): MeasuredRule => {
    return { id, kind: 'measured', measure, comparison, limit, consequence: { kind: 'must' } };
  };
  const [only = 'k0'] = kinds.map(({ id }) => id);
  return challenge({
    kit: { id: 'kit', name: 'Kit', kinds, frictions: [{ between: ['s0', 's1'], friction: 0.33 }] },
    base: oneOf(BASES, 'contact-patches'),
    slackMm: 2,
    ranking: oneOf(RANKINGS, { first: { by: 'height', better: 'more', roundTo: 1 }, tieBreaks: [] }),
    points: [
      { id: 'tall', measure: 'height', points: 2, per: 10, rounding: oneOf(['none', 'down'] as const, 'none') },
      { id: 'corners', measure: 'corners', points: 1, per: 3, rounding: 'nearest' },
      { id: 'ground', measure: 'base-area', points: -1, per: 500, rounding: 'up' },
    ],
    requirements: [
      must('pieces', 'pieces', oneOf(['exactly', 'at-most'] as const, 'exactly'), whole(1, 5)),
      ...(whole(0, 2) === 0 ? [must('tilt', 'stands-to', 'at-least', (whole(2, 25) * Math.PI) / 180)] : []),
      ...(whole(0, 2) === 0 ? [must('ground', 'base-area', 'at-most', whole(900, 9000))] : []),
      ...(whole(0, 4) === 0 ? [must('one', `kind:${only}`, 'at-least', 1)] : []),
    ],
  });
}
