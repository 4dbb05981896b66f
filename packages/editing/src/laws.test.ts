// What must hold for every run of commands over every kit. mm.

import type { LaidPiece } from '@cairnmark/geometry';
import { buildStack } from '@cairnmark/geometry';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bench, follow, play, reached, run } from '../../../tests/reference/edited-builds.ts';
import { share } from '../../../tests/tools/share.ts';
import { edit } from './edit.ts';
import { degreesOf } from './grid.ts';
import { begin, canRedo, canUndo, did, redo, undo } from './history.ts';
import type { Bench, Command, Pieces } from './types.ts';

const SEED = 20261127;
const RUNS = { seed: SEED, numRuns: share(1000, 40) };

it(`undone step by step a run gives the first layout back, redone the last (seed ${SEED})`, () => {
  fc.assert(
    fc.property(bench, run, run, (over, first, second) => {
      const start = reached(first, over);
      const layouts = second.reduce<Pieces[]>(
        (sofar, intent) => {
          const now = sofar.at(-1) ?? [];
          const { result } = play([() => intent(now, over)], over)[0] ?? {};
          return result?.ok && result.value.pieces !== now ? [...sofar, result.value.pieces] : sofar;
        },
        [start],
      );
      let history = layouts.slice(1).reduce(did, begin(start));
      for (const layout of [...layouts].reverse()) {
        expect(history.now).toBe(layout);
        history = undo(history);
      }
      expect(canUndo(history)).toBe(false);
      for (const layout of layouts) {
        expect(history.now).toBe(layout);
        history = redo(history);
      }
      expect(canRedo(history)).toBe(false);
    }),
    RUNS,
  );
});

it(`a stack can be built from every layout that a command gives; a refusal has a reason (seed ${SEED})`, () => {
  let [accepted, refused] = [0, 0];
  fc.assert(
    fc.property(bench, run, (over, intents) => {
      for (const { result, before } of play(intents, over)) {
        if (!result.ok) {
          refused += 1;
          expect(result.issues.length).toBeGreaterThan(0);
          for (const { path } of result.issues) {
            if (path[0] === 'pieces') expect(path[1]).toBeLessThanOrEqual(before.length);
          }
          continue;
        }
        accepted += 1;
        const { pieces, piece } = result.value;
        expect(buildStack(pieces, over.solids, over.slackMm).ok).toBe(true);
        if (piece !== null) expect(pieces[piece]).toBeDefined();
      }
    }),
    RUNS,
  );
  expect(accepted).toBeGreaterThan(5 * refused);
});

it(`no build uses more pieces of a kind than there are (seed ${SEED})`, () => {
  let full = 0;
  fc.assert(
    fc.property(bench, run, (over, intents) => {
      for (const { result, before, command } of play(intents, over)) {
        const now = result.ok ? result.value.pieces : before;
        for (const [kind, most] of over.stock)
          expect(now.filter((one) => one.kind === kind).length).toBeLessThanOrEqual(most);
        if (result.ok || result.issues[0]?.code !== 'none-left') continue;
        full += 1;
        const kind = 'kind' in command ? command.kind : before['piece' in command ? command.piece : -1]?.kind;
        expect(before.filter((one) => one.kind === kind).length).toBe(3);
      }
    }),
    RUNS,
  );
  expect(full).toBeGreaterThan(0);
});

it(`taking a piece off is never refused, and leaves the others as they were laid (seed ${SEED})`, () => {
  fc.assert(
    fc.property(bench, run, fc.nat(), (over, intents, n) => {
      const pieces = reached(intents, over);
      fc.pre(pieces.length > 0);
      const piece = n % pieces.length;
      const left = follow(pieces, [{ do: 'take-off', piece }], over);
      expect(new Set(left)).toEqual(new Set(pieces.filter((_, index) => index !== piece)));
      expect(left.length).toBe(pieces.length - 1);
    }),
    RUNS,
  );
});

it(`there and back is no move at all, wherever nothing fell into another order on the way (seed ${SEED})`, () => {
  const length = fc.double({ min: -500, max: 500, noNaN: true });
  let moved = 0;
  fc.assert(
    fc.property(bench, run, fc.func(fc.boolean()), length, length, (over, intents, isTaken, xMm, yMm) => {
      const pieces = reached(intents, over);
      const some = pieces.flatMap((_, index) => (isTaken(index) ? [index] : []));
      const there = edit(pieces, { do: 'shift', pieces: some, xMm, yMm }, over);
      if (!there.ok || pieces.some((one, index) => !some.includes(index) && there.value.pieces[index] !== one)) return;
      moved += some.length;
      const back = follow(there.value.pieces, [{ do: 'shift', pieces: some, xMm: -xMm, yMm: -yMm }], over);
      expect(JSON.stringify(back)).toBe(JSON.stringify(pieces));
    }),
    RUNS,
  );
  expect(moved).toBeGreaterThan(RUNS.numRuns);
});

it(`whatever commands lead to can be typed again, piece by piece, to the last byte (seed ${SEED})`, () => {
  let pieces = 0;
  fc.assert(
    fc.property(bench, run, (over, intents) => {
      const layout = reached(intents, over);
      pieces += layout.length;
      expect(JSON.stringify(typedAgain(layout, over))).toBe(JSON.stringify(layout));
    }),
    RUNS,
  );
  expect(pieces).toBeGreaterThan(3 * RUNS.numRuns);
});

const typedAgain = (layout: Pieces, over: Bench): Pieces =>
  layout.reduce<Pieces>((now, piece, index) => follow(now, typing(piece, index, now), over), []);

/** What is typed for one piece: numbers as they are shown, in whole degrees and hundredths of a millimetre. */
function typing(laid: LaidPiece, piece: number, before: Pieces): readonly Command[] {
  const of = before.length > 0 ? piece - 1 : 'table';
  const from = before.at(-1) ?? { xMm: 0, yMm: 0 };
  const shown = (mm: number): number => Number(mm.toFixed(2));
  return [
    { do: 'add', kind: laid.kind },
    { do: 'lay-on', piece, resting: laid.resting },
    { do: 'turn-to', piece, degrees: degreesOf(laid.turnRad) },
    { do: 'offset', piece, of, xMm: shown(laid.xMm - from.xMm), yMm: shown(laid.yMm - from.yMm) },
    ...(laid.on === undefined ? [] : [{ do: 'stand', piece, on: 'table' } as const]),
    ...(laid.held === undefined ? [] : [{ do: 'hold', piece, held: laid.held } as const]),
  ];
}
