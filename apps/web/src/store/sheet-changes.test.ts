import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';
import { piecesUsed } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withoutResults } from './group-changes.ts';
import { beginTry, confirmAll, lastTry, onSheet, withPieces, withReadingAt } from './sheet-changes.ts';

const demo = demoClass();
const fresh = withoutResults(demo, 'Skerry Light again');
const CELL = { group: 'terns', challenge: 'tall-light', at: '2026-03-05T10:20:00+01:00' };
const last = (record: ClassRecord) => lastTry(record, CELL.group, CELL.challenge)!;

describe('what is typed on the record sheet', () => {
  it('begins a try of numbers where there is none', () => {
    const attempt = last(onSheet(CELL, withReadingAt(0, 357))(fresh));
    expect(attempt.layout).toEqual({ kind: 'numbers-only', pieces: [] });
    expect(attempt.observed.heightReadingsMm).toEqual([357]);
    expect(attempt.confirmedBy).toBeNull();
  });

  it('goes to the last try where there is one, which has to be seen again', () => {
    const before = last(demo);
    expect(before.confirmedBy).not.toBeNull();
    const after = onSheet(CELL, withReadingAt(7, 357))(demo);
    expect(after.attempts).toHaveLength(demo.attempts.length);
    expect(last(after).observed.heightReadingsMm).toEqual([...before.observed.heightReadingsMm, 357]);
    expect(last(after).confirmedBy).toBeNull();
  });

  it('a next try is the last one, also after one that came from a device whose clock is fast', () => {
    const fast = beginTry({ ...CELL, at: '2026-03-05T12:00:00+01:00' })(fresh);
    const next = beginTry(CELL)(fast);
    expect(last(next).id).not.toBe(last(fast).id);
    expect(Date.parse(last(next).at) - Date.parse(last(fast).at)).toBe(1000);
    expect(() => encode('class', next)).not.toThrow();
  });

  it('a reading is written over, and taken away', () => {
    const typed = [onSheet(CELL, withReadingAt(0, 357)), onSheet(CELL, withReadingAt(1, 353))];
    const two = typed.reduce((record, change) => change(record), fresh);
    expect(last(onSheet(CELL, withReadingAt(0, 361))(two)).observed.heightReadingsMm).toEqual([361, 353]);
    expect(last(onSheet(CELL, withReadingAt(0, null))(two)).observed.heightReadingsMm).toEqual([353]);
  });

  it('pieces are counted kind by kind, and a drawn build keeps its own', () => {
    const counted = [onSheet(CELL, withPieces('cube', 3)), onSheet(CELL, withPieces('cone', 1))].reduce(
      (record, change) => change(record),
      fresh,
    );
    expect(piecesUsed(last(counted).layout)).toEqual(['cube', 'cube', 'cube', 'cone']);
    expect(piecesUsed(last(onSheet(CELL, withPieces('cube', 0))(counted)).layout)).toEqual(['cone']);
    const drawn = onSheet(CELL, withPieces('cube', 3))(demo);
    expect(last(drawn).layout).toBe(last(demo).layout);
  });

  it('a further try is empty, and the one before stays', () => {
    const again = beginTry({ ...CELL, at: '2026-12-05T10:20:00+01:00' })(demo);
    expect(again.attempts.slice(0, -1)).toEqual(demo.attempts);
    expect(last(again).observed.heightReadingsMm).toEqual([]);
  });

  it('a whole sheet is confirmed at once, but for groups of which nothing is known or that are absent', () => {
    const typed = onSheet(CELL, withReadingAt(0, 357))(fresh);
    const seen = confirmAll(CELL.challenge, 'measurer')(typed);
    expect(seen.attempts.map(({ confirmedBy }) => confirmedBy)).toEqual(['measurer']);
    const begun = beginTry(CELL)(fresh);
    expect(confirmAll(CELL.challenge, 'measurer')(begun).attempts[0]?.confirmedBy).toBeNull();
    const absent = onSheet(CELL, (attempt) => ({ ...attempt, state: { kind: 'absent' } }))(fresh);
    expect(confirmAll(CELL.challenge, 'measurer')(absent).attempts[0]?.confirmedBy).toBeNull();
  });

  it('whatever is typed, the class can be kept', () => {
    const cell = fc.record({
      group: fc.constantFrom(...demo.groups.map(({ id }) => id), 'nobody'),
      challenge: fc.constantFrom(...demo.challenges.map(({ id }) => id)),
      at: fc.constant(CELL.at),
    });
    const edit = fc.oneof(
      fc.tuple(fc.nat({ max: 4 }), fc.option(fc.nat({ max: 5000 }))).map(([k, mm]) => withReadingAt(k, mm)),
      fc.tuple(fc.constantFrom('cube', 'cone'), fc.nat({ max: 7 })).map(([kind, count]) => withPieces(kind, count)),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, edit), { maxLength: 7 }), (steps) => {
        const typed = steps.reduce((record, [at, change]) => onSheet(at, change)(record), fresh);
        expect(() => encode('class', typed)).not.toThrow();
      }),
      { numRuns: 40 },
    );
  });
});
