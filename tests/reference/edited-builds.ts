// Random kits and random commands for the laws of the editor. Lengths mm, turns in degrees.

import type { Bench, Command, Edited, EditIssue, Pieces, Spot } from '@cairnmark/editing';
import { edit, restingsOf } from '@cairnmark/editing';
import type { Result, SolidSpec, Stack } from '@cairnmark/geometry';
import { buildStack } from '@cairnmark/geometry';
import fc from 'fast-check';
import { box, cone, cylinder, solidsOf, sphere } from './stacked-builds.ts';

/** A bench with some of each kind. */
export const benchOf = (specs: Readonly<Record<string, SolidSpec>>, each: number, slackMm = 0): Bench => ({
  solids: solidsOf(specs),
  stock: new Map(Object.keys(specs).map((kind) => [kind, each])),
  slackMm,
});

/** The stack that a layout drops to; a refusal is an error of the test. */
export function stackAt(pieces: Pieces, { solids, slackMm }: Bench): Stack {
  const built = buildStack(pieces, solids, slackMm);
  if (!built.ok) throw new Error(`refused: ${JSON.stringify(built.issues)}`);
  return built.value;
}

/** What the commands make of a layout; a refusal is an error of the test. */
export function follow(pieces: Pieces, commands: readonly Command[], bench: Bench): Pieces {
  return commands.reduce((now, command) => done(now, command, bench).pieces, pieces);
}

/** What one command makes of a layout; a refusal is an error of the test. */
export function done(pieces: Pieces, command: Command, bench: Bench): Edited {
  const edited = edit(pieces, command, bench);
  if (!edited.ok) throw new Error(`${JSON.stringify(command)} refused: ${JSON.stringify(edited.issues)}`);
  return edited.value;
}

/** Sizes to a tenth of a millimetre, and whole centimetres as often: there faces and edges fall together. */
const size = fc.oneof(
  fc.integer({ min: 2, max: 7 }).map((cm) => 10 * cm),
  fc.integer({ min: 200, max: 700 }).map((tenths) => tenths / 10),
);

/** Kits of nine kinds: boxes, prisms, pyramids, frusta, and round ones but for a cone on its side. */
const kit = fc.tuple(size, size, size, fc.integer({ min: 3, max: 8 })).map(
  ([a, b, c, sides]): Readonly<Record<string, SolidSpec>> => ({
    box: box(a, b, c),
    post: box(c, b, a),
    roof: { solid: 'triangular-prism', sizes: { a, b: a + b / 2, c: b, height: c } },
    nut: { solid: 'regular-prism', sizes: { sides, edge: a / 2, height: b } },
    log: cylinder(a / 2, c),
    cone: cone(b / 2, c),
    ball: sphere(c / 2),
    bucket: { solid: 'cone-frustum', sizes: { radius: b / 2, topRadius: b / 3, height: a } },
    plinth: { solid: 'rectangular-frustum', sizes: { length: a, width: b, topLength: a / 2, height: c } },
  }),
);

/** A bench over a random kit with three of each kind. */
export const bench: fc.Arbitrary<Bench> = fc
  .tuple(kit, fc.constantFrom(0, 2))
  .map(([specs, slackMm]) => benchOf(specs, 3, slackMm));

/** A command before it is known how many pieces there are: whole numbers stand for pieces, kinds and sides. */
export type Intent = (pieces: Pieces, over: Bench) => Command;

const pick = fc.nat({ max: 999 });
const place = fc.oneof(
  fc.integer({ min: -12, max: 12 }).map((half) => 5 * half),
  fc.double({ min: -60, max: 60, noNaN: true }),
);
const degrees = fc.oneof(fc.constantFrom(0, 90, 180, 270), fc.integer({ min: -400, max: 400 }));
const side = fc.constantFrom('left', 'right', 'back', 'front');

/** Mostly a piece that is there; one past the last of them at times. */
const which = (pieces: Pieces, n: number): number => n % (pieces.length + (n % 10 === 0 ? 1 : 0) || 1);

const kindOf = ({ solids }: Bench, n: number): string => [...solids.keys()][n % solids.size] ?? '';

/** One of the ways to lie, but never a cone on its side: its outline has thousands of corners. */
function restingFor(over: Bench, kind: string, n: number): string {
  const solid = over.solids.get(kind);
  const known = (solid === undefined ? [] : restingsOf(solid)).filter((id) => !isSlowOn(kind, id));
  return known[n % known.length] ?? 'base';
}
const isSlowOn = (kind: string, resting: string): boolean => ['cone', 'bucket'].includes(kind) && resting === 'side';

/** A surface: none, the table, or the top or bottom of a piece that is there. */
function surfaceFor(pieces: Pieces, over: Bench, n: number): number | null {
  const levels = stackAt(pieces, over).pieces.flatMap(({ topMm, bottomMm }) => [topMm, bottomMm]);
  return [null, 0, ...levels][n % (levels.length + 2)] ?? null;
}

/** Where a hand lets go. */
export const spot: fc.Arbitrary<(pieces: Pieces, over: Bench) => Spot> = fc
  .tuple(place, place, pick, fc.constantFrom('piece-below', 'grid', 'free'))
  .map(([xMm, yMm, n, lineUp]) => (pieces, over) => ({ xMm, yMm, surfaceMm: surfaceFor(pieces, over, n), lineUp }));

const intents: Readonly<Record<Command['do'], fc.Arbitrary<Intent>>> = {
  add: pick.map((n) => (_, over) => ({ do: 'add', kind: kindOf(over, n) })),
  'add-at': fc.tuple(pick, pick, spot).map(([n, m, at]) => (pieces, over) => {
    const kind = kindOf(over, n);
    return { do: 'add-at', kind, resting: restingFor(over, kind, m), spot: at(pieces, over) };
  }),
  'put-beside': fc.tuple(pick, pick, side).map(([n, m, to]) => (pieces) => ({
    do: 'put-beside',
    piece: which(pieces, n),
    of: which(pieces, m),
    side: to,
  })),
  'put-on': fc.tuple(pick, pick).map(([n, m]) => (pieces) => ({
    do: 'put-on',
    piece: which(pieces, n),
    of: m % 7 === 0 ? 'table' : which(pieces, m),
  })),
  offset: fc.tuple(pick, pick, place, place).map(([n, m, xMm, yMm]) => (pieces) => ({
    do: 'offset',
    piece: which(pieces, n),
    of: m % 7 === 0 ? 'table' : which(pieces, m),
    xMm,
    yMm,
  })),
  stand: fc.tuple(pick, fc.constantFrom('table', 'what-is-below')).map(([n, on]) => (pieces) => ({
    do: 'stand',
    piece: which(pieces, n),
    on,
  })),
  'move-to': fc.tuple(pick, spot).map(([n, at]) => (pieces, over) => ({
    do: 'move-to',
    piece: which(pieces, n),
    spot: at(pieces, over),
  })),
  shift: fc.tuple(fc.array(pick, { maxLength: 3 }), place, place).map(([some, xMm, yMm]) => (pieces) => ({
    do: 'shift',
    pieces: some.map((n) => which(pieces, n)),
    xMm,
    yMm,
  })),
  'turn-to': fc.tuple(pick, degrees).map(([n, to]) => (pieces) => ({
    do: 'turn-to',
    piece: which(pieces, n),
    degrees: to,
  })),
  'turn-by': fc.tuple(pick, degrees).map(([n, by]) => (pieces) => ({
    do: 'turn-by',
    piece: which(pieces, n),
    degrees: by,
  })),
  'lay-on': fc.tuple(pick, pick).map(([n, m]) => (pieces, over) => {
    const piece = which(pieces, n);
    return { do: 'lay-on', piece, resting: restingFor(over, pieces[piece]?.kind ?? '', m) };
  }),
  'lay-next': pick.map((n) => (pieces) => {
    const piece = which(pieces, n);
    const isSlow = ['cone', 'bucket'].includes(pieces[piece]?.kind ?? '');
    return isSlow ? { do: 'turn-by', piece, degrees: 15 } : { do: 'lay-next', piece };
  }),
  reorder: fc.tuple(pick, pick).map(([n, m]) => (pieces) => ({
    do: 'reorder',
    piece: which(pieces, n),
    to: which(pieces, m),
  })),
  copy: pick.map((n) => (pieces) => ({ do: 'copy', piece: which(pieces, n) })),
  'take-off': pick.map((n) => (pieces) => ({ do: 'take-off', piece: which(pieces, n) })),
  hold: fc.tuple(pick, fc.constantFrom('taped', 'glued', null)).map(([n, held]) => (pieces) => ({
    do: 'hold',
    piece: which(pieces, n),
    held,
  })),
  clear: fc.constant(() => ({ do: 'clear' })),
};

const { clear, 'take-off': takeOff, ...others } = intents;

const adding = fc.oneof(intents.add, intents['add-at']);

/** A run of commands: a few pieces first, then more that add than that take off, a clearing now and then. */
export const run: fc.Arbitrary<readonly Intent[]> = fc
  .tuple(
    fc.array(adding, { minLength: 2, maxLength: 8, size: 'max' }),
    fc.array(
      fc.oneof(
        { weight: 10, arbitrary: adding },
        { weight: 30, arbitrary: fc.oneof(...Object.values(others)) },
        { weight: 4, arbitrary: takeOff },
        { weight: 1, arbitrary: clear },
      ),
      { minLength: 4, maxLength: 16, size: 'max' },
    ),
  )
  .map(([first, then]) => [...first, ...then]);

export interface Step {
  readonly before: Pieces;
  readonly command: Command;
  readonly result: Result<Edited, EditIssue>;
}

/** The steps of a run from an empty table. Layouts are frozen: an editor that writes into one throws. */
export function play(intentsOfRun: readonly Intent[], over: Bench): readonly Step[] {
  let now: Pieces = Object.freeze([]);
  return intentsOfRun.map((intent) => {
    const before = now;
    const command = intent(before, over);
    const result = edit(before, command, over);
    if (result.ok) now = Object.freeze(result.value.pieces.map((piece) => Object.freeze(piece)));
    return { before, command, result };
  });
}

/** The layout at the end of a run. */
export function reached(intentsOfRun: readonly Intent[], over: Bench): Pieces {
  let now: Pieces = [];
  for (const { result } of play(intentsOfRun, over)) if (result.ok) now = result.value.pieces;
  return now;
}
