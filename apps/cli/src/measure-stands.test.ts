// Does it stand, as the terminal tells it: the demo's build that falls, what is asked on top of the report, and the solver
// that is loaded only where it is needed.

import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import type { LaidPiece } from '@cairnmark/geometry';
import { moveBy } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, classOf, KIT } from '../../../tests/reference/small-class.ts';
import { tried } from './tried.ts';

const FALLEN = 'tall-light-eiders-0935';
const DEMO = demoClass();

/** The demo with one build laid otherwise. */
const relaid = (record: ClassRecord, id: string, move: (pieces: readonly LaidPiece[]) => readonly LaidPiece[]) => ({
  ...record,
  attempts: record.attempts.map((one) =>
    one.id === id && one.layout.kind === 'laid-out'
      ? { ...one, layout: { ...one.layout, pieces: move(one.layout.pieces) } }
      : one,
  ),
});

const slab = (xMm: number): LaidPiece => ({ kind: 'slab', resting: 'base', xMm, yMm: 0, turnRad: 0 });
const cube = (xMm: number): LaidPiece => ({ ...slab(xMm), kind: 'cube' });
const file = (pieces: readonly LaidPiece[]): string => {
  const kit = { ...KIT, kinds: KIT.kinds.map((kind) => ({ ...kind, stock: 20 })) };
  const layout = { kind: 'laid-out', pieces } as const;
  return encode('class', classOf({ challenges: [challenge({ kit })], attempts: [attempt({ layout })] }));
};
/** Two cubes and seven slabs across them: no tower, and one piece more than the small solver takes. */
const GATE = file([cube(-35), cube(35), ...Array.from({ length: 7 }, () => slab(0))]);

describe("the demo's build that fell", () => {
  it('says what goes first, over which edge, how far past, and the move that mends it', async () => {
    const { out, code } = await tried(['measure', '--attempt', FALLEN]);
    expect(code).toBe(0);
    expect(out).toContain('Falls: by the sums it cannot stand.');
    // The four upper pieces balance 13.59 mm past the edge of the cube under them: worked out in tests/corpus/README.md.
    expect(out).toMatch(
      /Goes first: .*\(piece 2\).*\(piece 5\), tipping to the right over the edge of the part that rests on .*\(piece 1\)\./,
    );
    expect(out).toContain('The centre of the weight is 14 mm past the edge.');
    expect(out).toMatch(
      /Move the .*\(piece 2\), and all that stands on it, 14 mm to the left: then by the sums it stands/,
    );
    expect(out).toContain('The real test on the table decides.');
    const spanish = await tried(['measure', '--attempt', FALLEN, '--lang', 'es']);
    expect(spanish.out).toMatch(/14 mm .*izquierda/);
  });

  it('stands once that move is made, and not with one millimetre less', async () => {
    const mend = { piece: 1, moved: [1, 2, 3, 4], side: 'left' as const };
    const shiftedBy = async (byMm: number) => {
      const record = relaid(DEMO, FALLEN, (pieces) => moveBy(pieces, { ...mend, byMm }));
      return (await tried(['measure', 'c.json', '--attempt', FALLEN], { 'c.json': encode('class', record) })).out;
    };
    expect(await shiftedBy(14)).toContain('by the sums it stands');
    expect(await shiftedBy(13)).toContain('by the sums it falls, but a shift of 1 mm would hold it');
  });
});

describe('further questions', () => {
  it('say what happens without a piece, without each of them, and towards a side', async () => {
    const one = await tried(['measure', '--attempt', FALLEN, '--without', '2', '--tilt', 'left']);
    expect([one.code, one.err]).toEqual([0, '']);
    expect(one.out).toMatch(/Without the .*\(piece 2\)/);
    const all = await tried(['measure', '--attempt', FALLEN, '--without', 'all']);
    expect(all.out.match(/Without the /g)).toHaveLength(5);
    const tilted = await tried(['measure', '--attempt', 'tall-light-terns-0923', '--tilt', '30']);
    expect(tilted.out).toContain('(30° round from the right)');
  });

  it('that cannot be asked are refused', async () => {
    const refusals = [
      ['measure', '--attempt', FALLEN, '--without', '6'],
      ['measure', '--attempt', FALLEN, '--tilt', 'up'],
      ['measure', '--attempt', 'harbour-wall-petrels-1124', '--without', '1'],
    ];
    for (const args of refusals) {
      const { code, out, err } = await tried(args);
      expect([code, out]).toEqual([1, '']);
      expect(err).toMatch(/\.\n$/);
    }
  });
});

describe('the solver', () => {
  it('is not loaded where the fast path or the small solver decides', async () => {
    const small = file([cube(-35), cube(35), slab(0)]);
    const files = { 'gate.json': small };
    expect((await tried(['measure', '--attempt', FALLEN], files)).solverLoads).toBe(0);
    expect(await tried(['measure', 'gate.json'], files)).toMatchObject({ code: 0, solverLoads: 0 });
  });

  it('is loaded, once, for a larger bridge, which then has its margins', async () => {
    const { out, solverLoads } = await tried(['measure', 'gate.json', '--without', 'all'], { 'gate.json': GATE });
    expect(solverLoads).toBe(1);
    expect(out).toMatch(/Stands up to a tilt of \d+°/);
    expect(await tried(['score', 'gate.json'], { 'gate.json': GATE })).toMatchObject({ code: 0, solverLoads: 1 });
  });
});
