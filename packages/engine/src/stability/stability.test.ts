// Does a report say whether the build stands: from the kit's materials and frictions, the challenge's slack and ruler and
// what people know of single pieces. Slabs of 60 x 40 x 30 and cubes of 50 of folded paper.

import type { LaidPiece } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { HIGHS } from '../../../../tests/reference/highs.ts';
import {
  attempt,
  challenge,
  classOf,
  group,
  KIT,
  laid,
  numbersOnly,
  PAPER,
  reportOn,
  STATICS,
} from '../../../../tests/reference/small-class.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { scoreClass } from '../class/score-class.ts';
import { evaluate } from '../evaluate/evaluate.ts';
import type { Report } from '../report-types.ts';
import type { Challenge } from '../types.ts';
import { needsSolver, someNeedSolver } from './statics.ts';

const at = (kind: string, xMm: number, more: Partial<LaidPiece> = {}): LaidPiece => ({
  kind,
  resting: 'base',
  xMm,
  yMm: 0,
  turnRad: 0,
  ...more,
});
const on = (pieces: readonly LaidPiece[], at_: Challenge = challenge()): Report =>
  reportOn(attempt({ layout: { kind: 'laid-out', pieces } }), at_);
/** A slab that lies on two cubes and five slabs on it: no tower, and more than the small solver takes. */
const GATE = [at('cube', -35), at('cube', 35), ...Array.from({ length: 7 }, () => at('slab', 0))];

describe('the stability of a report', () => {
  it('is that of a cube that hangs 7 mm over the edge of a slab: 5 mm in its own unit of the ruler', () => {
    // The cube's centre of mass is 37 from the middle of a slab that ends at 30.
    const falling = on([at('slab', 0), at('cube', 37)]).stability;
    expect(falling).toMatchObject({ verdict: 'falls', stands: false, mend: { piece: 1, side: 'left', byMm: 7 } });
    expectNear(falling?.first[0]?.hinge?.pastMm ?? Number.NaN, 7, { absolute: 1e-9 });
    const inCentimetres = on([at('slab', 0), at('cube', 37)], challenge({ ruler: 'cm' })).stability;
    expect(inCentimetres).toMatchObject({ verdict: 'too-close-to-call', stands: false, mend: { byMm: 10 } });
  });

  it('is not there without a drawing of the pieces, without pieces, and without a build', () => {
    expect(reportOn(attempt({ layout: numbersOnly('cube') })).stability).toBeNull();
    expect(reportOn(attempt({ layout: laid() })).stability).toBeNull();
    expect(reportOn(attempt({ state: { kind: 'absent' } })).stability).toBeNull();
  });

  it('takes frictions from the kit: the smaller of two, or the one stated for the pair', () => {
    const kit = {
      ...KIT,
      kinds: KIT.kinds.map((kind) => (kind.id === 'slab' ? { ...kind, surface: 'card', friction: 0.3 } : kind)),
    };
    const pieces = [at('cube', 0), at('slab', 0)];
    const slides = (frictions: Challenge['kit']['frictions']) =>
      Math.tan(on(pieces, challenge({ kit: { ...kit, frictions } })).stability?.slidesAt?.tiltRad ?? Number.NaN);
    expectNear(slides([]), 0.3, { relative: 1e-12 });
    expectNear(slides([{ between: ['paper', 'card'], friction: 0.37 }]), 0.37, { relative: 1e-12 });
    expectNear(slides([{ between: ['table', 'paper'], friction: 0.13 }]), 0.13, { relative: 1e-12 });
  });

  it('lets pieces within the slack of the challenge carry together, and says how far it closed', () => {
    const kit = {
      ...KIT,
      kinds: [
        ...KIT.kinds,
        ...KIT.kinds
          .filter(({ id }) => id === 'cube')
          .map((kind) => ({ ...kind, id: 'worn', solid: { solid: 'cube' as const, sizes: { edge: 48.5 } } })),
      ],
    };
    const pieces = [at('cube', -25), at('worn', 45), at('slab', 12)];
    expect(on(pieces, challenge({ kit })).stability).toMatchObject({ verdict: 'falls', closedGaps: [] });
    const { stability } = on(pieces, challenge({ kit, slackMm: 2 }));
    expect(stability).toMatchObject({ stands: true, closedGaps: [{ upper: 2, lower: 1 }] });
    expectNear(stability?.closedGaps[0]?.gapMm ?? Number.NaN, 1.5, { absolute: 1e-9 });
  });

  it('knows what people know of a piece: how it is held, and what it weighs', () => {
    const held = on([at('slab', 0), at('cube', 37, { held: 'glued' })]).stability;
    expect(held).toMatchObject({ verdict: 'not-predicted', notPredicted: [{ piece: 1, why: 'glued' }], stands: false });
    // The slab hangs out by 28 of its 60, and its own weight would hold it; 100 g at its outer end would not.
    const stone = at('cube', 40, { weighed: { massG: 100 } });
    expect(on([at('cube', 0), at('slab', 18), stone]).stability?.stands).toBe(false);
    expect(on([at('cube', 0), at('slab', 18)]).stability?.stands).toBe(true);
  });

  it('weighs the tabs of what was cut from a printed net, and of nothing else', () => {
    // Tabs of a third of the cube's own paper, 24 mm out to the right: the cube balances 6 mm further out than its middle.
    const tabsOf = () => ({ areaMm2: 5000, centre: [24, 0, 25] as const });
    const standsWith = (printedNet: boolean): boolean | undefined | null => {
      const kinds = KIT.kinds.map((kind) => ({ ...kind, material: { ...PAPER, printedNet } }));
      const setting = { challenge: challenge({ kit: { ...KIT, kinds } }), group: group('terns'), events: [] };
      const build = attempt({ layout: { kind: 'laid-out', pieces: [at('slab', 0), at('cube', 27)] } });
      const report = evaluate(build, setting, { ...STATICS, tabsOf });
      return report.ok ? report.value.stability?.stands : undefined;
    };
    expect([standsWith(false), standsWith(true)]).toEqual([true, false]);
  });

  it('asks for a solver only where it takes one, and then says how far', () => {
    const gate = attempt({ layout: { kind: 'laid-out', pieces: GATE } });
    const without = evaluate(gate, { challenge: challenge(), group: group('terns'), events: [] }, STATICS);
    const withOne = evaluate(
      gate,
      { challenge: challenge(), group: group('terns'), events: [] },
      { ...STATICS, solver: HIGHS },
    );
    if (!without.ok || !withOne.ok) throw new Error('refused');
    expect([needsSolver(without.value), needsSolver(withOne.value)]).toEqual([true, false]);
    expect(without.value.stability).toMatchObject({ stands: true, standsTo: null });
    expect(withOne.value.stability?.standsTo?.tiltRad).toBeGreaterThan(0.1);
    const scored = (attempts: readonly (typeof gate)[]) => scoreClass(classOf({ attempts }), STATICS);
    const [tower, both] = [scored([attempt()]), scored([attempt(), { ...gate, id: 'gate' }])];
    if (!tower.ok || !both.ok) throw new Error('refused');
    expect([someNeedSolver(tower.value), someNeedSolver(both.value)]).toEqual([false, true]);
  });
});

describe('frictions of a kit', () => {
  it('are of surfaces that there are, each pair once, within reason', () => {
    const kit = {
      ...KIT,
      frictions: [
        { between: ['paper', 'table'], friction: 0.5 },
        { between: ['table', 'paper'], friction: 0.6 },
        { between: ['paper', 'glass'], friction: 7 },
      ] as const,
    };
    const result = evaluate(attempt(), { challenge: challenge({ kit }), group: group('terns'), events: [] }, STATICS);
    expect(result).toEqual({
      ok: false,
      issues: [
        {
          code: 'friction-twice',
          path: ['challenge', 'kit', 'frictions', 1, 'between'],
          details: { first: 'table', second: 'paper' },
        },
        {
          code: 'surface-unknown',
          path: ['challenge', 'kit', 'frictions', 2, 'between', 1],
          details: { surface: 'glass' },
        },
        {
          code: 'number-out-of-range',
          path: ['challenge', 'kit', 'frictions', 2, 'friction'],
          details: { value: 7, least: 0, most: 2 },
        },
      ],
    });
  });
});
