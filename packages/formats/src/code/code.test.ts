// What a code gives back is what went in, whatever the attempt; and what is no such code is refused for what it is.

import { readFileSync } from 'node:fs';
import type { Attempt, ClassRecord } from '@cairnmark/engine';
import type { Layout } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { challenge } from '../../../../tests/tools/records/challenge.ts';
import { attemptAt } from '../../../../tests/tools/records/class-record.ts';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import { decode } from '../decode.ts';
import { CODE_BYTES_MOST } from '../limits.ts';
import { base45, bytesOfBase45 } from './base45.ts';
import type { CodedTry } from './code.ts';
import { decodeCode, encodeCode } from './code.ts';
import { crc32 } from './crc32.ts';
import { printsOf } from './prints.ts';

const seed = freshSeed('round trip of codes');
const runs = (full: number, part: number) => ({ seed, numRuns: share(full, part), endOnFailure: true });

const print = fc.nat(2 ** 24 - 1);
const coded: fc.Arbitrary<CodedTry> = challenge
  .chain((one) => attemptAt(one, ['terns', 'fulmars']))
  .chain((attempt) =>
    fc.record({ attempt: fc.constant(attempt), prints: fc.record({ rules: print, kit: print, sizes: print }) }),
  );

const demo = demoClass(new URL('../../../demo/src/skerry-light.json', import.meta.url));
const codesOfDemo = demo.attempts.map((attempt) => codeOf({ attempt, prints: printsIn(attempt) }));
const [tower = ''] = codesOfDemo;
const [first] = demo.attempts as [Attempt];

describe(`a code (seed ${seed})`, () => {
  it('gives a try back to the last digit, and written again is the same text', () => {
    fc.assert(
      fc.property(coded, (value) => {
        const text = encodeCode(value);
        // A text of signs that no code has room for is told with what it would need.
        if (!text.ok) expect(text.issues[0]?.details['bytes']).toBeGreaterThan(CODE_BYTES_MOST);
        else expect(decodeCode(text.value)).toEqual({ ok: true, value });
        expect(encodeCode(value)).toEqual(text);
      }),
      runs(5_000, 200),
    );
  });

  it('gives every try of the demo class back', () => {
    for (const [k, attempt] of demo.attempts.entries()) {
      expect(decodeCode(codesOfDemo[k]!)).toEqual({ ok: true, value: { attempt, prints: printsIn(attempt) } });
    }
  });

  it('is refused where any one sign of it was misread', () => {
    const sign = fc.constantFrom(...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:');
    const place = fc.integer({ min: tower.indexOf(':') + 1, max: tower.length - 1 });
    fc.assert(
      fc.property(place, sign, (at, other) => {
        fc.pre(tower[at] !== other);
        expect(faultsOf(tower.slice(0, at) + other + tower.slice(at + 1))).toEqual(['code-misread']);
      }),
      runs(5_000, 500),
    );
  });

  it('is refused where it was cut off or has something behind it', () => {
    for (let end = tower.indexOf(':') + 1; end < tower.length; end += 1) {
      expect(faultsOf(tower.slice(0, end))).toEqual(['code-misread']);
    }
    for (const behind of ['0', '00', '000', ' ', '\n', 'é']) expect(faultsOf(tower + behind)).toEqual(['code-misread']);
    expect(faultsOf(tower + '0'.repeat(2_000))).toEqual(['code-misread']);
  });

  it('is none where something else stands in it', () => {
    const others = [
      '',
      'https://school.example',
      'CAIRN',
      'CAIRN:',
      'CAIRN0:00',
      'CAIRN01:00',
      'CAIRN-1:',
      'cairn1:00',
    ];
    for (const text of others) expect(faultsOf(text)).toEqual(['code-of-others']);
  });

  it('of a newer program is told as that', () => {
    expect(decodeCode('CAIRN2:ANYTHING')).toEqual({
      ok: false,
      issues: [{ code: 'code-newer', path: [], details: { version: 2, newest: 1 } }],
    });
  });

  it('with a right checksum and any content is refused or is what would be written', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (content) => {
        const text = `CAIRN1:${base45(withCheck(content))}`;
        const read = decodeCode(text);
        if (read.ok) expect(encodeCode(read.value)).toEqual({ ok: true, value: text });
        else expect(read.issues.length).toBeGreaterThan(0);
      }),
      runs(20_000, 2_000),
    );
  });

  it('with a right checksum and a byte changed or more is refused or is what would be written', () => {
    const whole = bytesOfBase45(tower.slice('CAIRN1:'.length))!.slice(0, -4);
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.nat(255), fc.uint8Array({ maxLength: 2 }), (at, byte, more) => {
        const content = Uint8Array.from([...whole.slice(0, at), byte, ...whole.slice(at + 1), ...more]);
        const text = `CAIRN1:${base45(withCheck(content))}`;
        const read = decodeCode(text);
        if (read.ok) expect(encodeCode(read.value)).toEqual({ ok: true, value: text });
      }),
      runs(20_000, 2_000),
    );
  });

  it('that says what no attempt may hold is refused with the faults that a file would be', () => {
    // Written by hand: the id of the group is empty, and everything behind it zeros.
    const content = new Uint8Array(30);
    expect(faultsOf(`CAIRN1:${base45(withCheck(content))}`)).toContain('not-an-id');
  });

  it('is told as too large with the bytes that it would need', () => {
    const long = { ...first, layout: fortOf(400) };
    const refused = encodeCode({ attempt: long, prints: printsIn(long) });
    expect(refused).toMatchObject({ ok: false, issues: [{ code: 'code-too-large', details: { most: 800 } }] });
    const bytes = refused.ok ? 0 : Number(refused.issues[0]?.details['bytes']);
    expect(bytes).toBeGreaterThan(800);
  });

  it('keeps times as they are written, and no minus before a zero', () => {
    const times = [
      '2026-03-05T10:20:00+01:00',
      '2026-03-05T10:20:00.000Z',
      '1999-12-31T23:59:59Z',
      '2026-03-05T10:20:00.12-03:30',
      '2026-03-05T10:20:00+05:41',
      '2199-01-01T00:00:00-12:00',
    ];
    for (const at of times) {
      const value = { attempt: { ...first, at }, prints: printsIn(first) };
      expect(decodeCode(codeOf(value))).toEqual({ ok: true, value });
    }
    const minus = { ...first, observed: { heightReadingsMm: [-0] } };
    const read = decodeCode(codeOf({ attempt: minus, prints: printsIn(first) }));
    expect(read.ok && Object.is(read.value.attempt.observed.heightReadingsMm[0], 0)).toBe(true);
  });

  it('throws on an attempt that could not be read back', () => {
    expect(() => encodeCode({ attempt: { ...first, id: 'Not an id' }, prints: printsIn(first) })).toThrow(RangeError);
  });
});

describe('the bytes of a code', () => {
  // What DEVELOPERS.md states; a change that needs more room has to say so there.
  it.each([
    ['tall-light-puffins-0920', 112],
    ['harbour-wall-eiders-1128', 184],
  ])('of %s are %i', (id, bytes) => {
    const at = demo.attempts.findIndex((attempt) => attempt.id === id);
    expect(bytesOf(codesOfDemo[at]!)).toBe(bytes);
  });

  it('leave room for forts of 79 pieces', () => {
    expect([79, 80].map((pieces) => fits(fortOf(pieces)))).toEqual([true, false]);
  });
});

function demoClass(file: URL): ClassRecord {
  const read = decode(readFileSync(file, 'utf8'), 'class');
  if (!read.ok) throw new RangeError('the demo class was refused');
  return read.value.value;
}

/** Pieces at hundredths of a mm and whole degrees, none like the one before it: as if each had been dragged freely. */
function fortOf(pieces: number): Layout {
  const kinds = ['cube', 'cuboid', 'cylinder', 'hex-prism', 'sq-pyramid', 'tri-prism', 'cone', 'sq-frustum'];
  return {
    kind: 'laid-out',
    pieces: Array.from({ length: pieces }, (_, k) => ({
      kind: kinds[k % kinds.length]!,
      resting: k % 3 === 0 ? 'long-side' : 'base',
      xMm: Math.round(Math.sin(k + 1) * 20_000) / 100,
      yMm: Math.round(Math.cos(3 * k + 1) * 20_000) / 100,
      turnRad: (((k * 37) % 360) * Math.PI) / 180,
      ...(k % 2 === 0 && { on: 'table' as const }),
    })),
  };
}

function fits(layout: Layout): boolean {
  return encodeCode({ attempt: { ...first, layout }, prints: printsIn(first) }).ok;
}

function printsIn({ challenge: id, group: ofGroup }: Attempt) {
  const at = demo.challenges.find((one) => one.id === id)!;
  return printsOf(
    at,
    demo.groups.find((one) => one.id === ofGroup),
  );
}

function codeOf(value: CodedTry): string {
  const text = encodeCode(value);
  if (!text.ok) throw new RangeError('too large');
  return text.value;
}

function faultsOf(text: string): readonly string[] {
  const read = decodeCode(text);
  return read.ok ? [] : read.issues.map(({ code }) => code);
}

const bytesOf = (text: string): number => bytesOfBase45(text.slice(text.indexOf(':') + 1))!.length;

function withCheck(content: Uint8Array): Uint8Array {
  const check = new Uint8Array(4);
  new DataView(check.buffer).setUint32(0, crc32(content));
  return Uint8Array.from([...content, ...check]);
}
