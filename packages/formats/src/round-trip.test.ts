import { readFileSync } from 'node:fs';
import { scoreClass } from '@cairnmark/engine';
import type { SupplyEvent } from '@cairnmark/scoring';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  group,
  reportOn,
  STATICS,
  attempt as smallAttempt,
  challenge as smallChallenge,
} from '../../../tests/reference/small-class.ts';
import { challenge, kit } from '../../../tests/tools/records/challenge.ts';
import { attemptAt, classRecord } from '../../../tests/tools/records/class-record.ts';
import { freshSeed, share } from '../../../tests/tools/share.ts';
import { decode } from './decode.ts';
import { encode } from './encode.ts';
import type { Format, Records } from './formats.ts';

const seed = freshSeed('round trip of files');
const attempt = challenge.chain((one) => attemptAt(one, ['terns', 'fulmars']));

/** What comes back is the record, and written again it is the same text. */
function comesBack<F extends Format>(format: F, value: Records[F]): void {
  const text = encode(format, value);
  expect(decode(text)).toEqual({ ok: true, value: { format, value } });
  expect(text.endsWith('}\n')).toBe(true);
  const again = decode(text, format);
  if (!again.ok) throw new RangeError('the file was refused');
  expect(encode(format, again.value.value)).toBe(text);
}

describe(`encode, then decode (seed ${seed})`, () => {
  const runs = (full: number, part: number) => ({ seed, numRuns: share(full, part) });

  it('gives a kit back', () => {
    fc.assert(
      fc.property(kit, (value) => comesBack('kit', value)),
      runs(2_000, 200),
    );
  });
  it('gives a challenge back', () => {
    fc.assert(
      fc.property(challenge, (value) => comesBack('challenge', value)),
      runs(2_000, 200),
    );
  });
  it('gives an attempt back', () => {
    fc.assert(
      fc.property(attempt, (value) => comesBack('attempt', value)),
      runs(2_000, 200),
    );
  });
  it('gives a class back', () => {
    fc.assert(
      fc.property(classRecord, (value) => comesBack('class', value)),
      runs(2_000, 100),
    );
  });

  it('gives the report of every attempt back', () => {
    const tower = decode(
      readFileSync(new URL('../../../tests/corpus/tower-of-five.json', import.meta.url), 'utf8'),
      'class',
    );
    const scored = tower.ok ? scoreClass(tower.value.value, STATICS) : tower;
    if (!scored.ok) throw new RangeError('the class was refused');
    const reports = [...scored.value.reports.values()].flat();
    expect(reports).toHaveLength(1);
    for (const report of reports) comesBack('report', report);
  });

  it('gives the same bytes whatever the order of the keys', () => {
    fc.assert(
      fc.property(classRecord, (value) => {
        expect(encode('class', reversed(value))).toBe(encode('class', value));
      }),
      runs(500, 50),
    );
  });

  it('gives a report back on a group that dropped more pieces than any build may have', () => {
    const supply = { ends: { kind: 'stock-empty' }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
    const what = { kind: 'dropped', piece: 'cube', count: 1_000 } as const;
    const events = Array.from({ length: 7 }, (_, k): SupplyEvent => ({ id: `s${k}`, group: 'terns', what }));
    comesBack('report', reportOn(smallAttempt(), smallChallenge({ supply }), group('terns'), events));
  });
});

/** The same value with the keys of every object the other way round. */
function reversed<T>(value: T): T {
  if (Array.isArray(value)) return value.map(reversed) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, inner]) => [key, reversed(inner)]),
  ) as T;
}
