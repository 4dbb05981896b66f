// Whole builds as files: every try of the demo class, and pieces on their sides and aslant.

import { demoClass } from '@cairnmark/demo';
import type { Attempt, ClassRecord } from '@cairnmark/engine';
import type { LaidPiece, PlacedPiece, Vec3 } from '@cairnmark/geometry';
import { buildStack, makeSolid, supportPoint } from '@cairnmark/geometry';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import type { Triangle } from '../../../../tests/reference/mesh-integrals.ts';
import { integrate } from '../../../../tests/reference/mesh-integrals.ts';
import { checkClosed } from '../../../../tests/reference/models/closed.ts';
import { readGlb } from '../../../../tests/reference/models/glb.ts';
import { readStl } from '../../../../tests/reference/models/stl.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { solidsOf } from '../drawing/solids-of.ts';
import type { At } from '../store/where-at.ts';
import { whereAt } from '../store/where-at.ts';
import { sagittaMm } from './facets.ts';
import { ReaderOfBlobs } from './for-tests.ts';
import type { NamedPiece } from './placed-pieces.ts';
import { placedPieces } from './placed-pieces.ts';
import { writeModel } from './write-model.ts';

beforeAll(() => void vi.stubGlobal('FileReader', ReaderOfBlobs));
afterAll(() => void vi.unstubAllGlobals());

const RECORD = demoClass();

/** mm. Floats of 32 bits on builds of less than 1 m, three of them in a product. */
const ROUNDING_MM = 1e-3;

const atOf = (record: ClassRecord, { id, group, challenge }: Attempt): At => {
  const at = whereAt(record, { classId: 'c', group, challenge, attempt: id });
  if (at === null) throw new RangeError(`no place for ${id}`);
  return at;
};

const write = async (format: 'stl' | 'glb', pieces: readonly NamedPiece[]): Promise<Uint8Array> => {
  const coloured = pieces.map((piece) => ({ ...piece, colour: '#6e9fdd' }));
  return new Uint8Array(await writeModel(format, 'Puffins', coloured));
};

it('every try of the demo class that is laid out: each piece is named by its kind and lies where Build has it', async () => {
  const tries = RECORD.attempts.filter(({ layout }) => layout.kind === 'laid-out' && layout.pieces.length > 0);
  expect(tries.length).toBeGreaterThan(9);
  for (const attempt of tries) {
    const at = atOf(RECORD, attempt);
    const placed = placedPieces(at)!;
    const built = buildStack(attempt.layout.pieces as readonly LaidPiece[], solidsOf(at.challenge, at.group), 0);
    if (!built.ok) throw new RangeError(attempt.id);
    const kinds = built.value.pieces.map(({ kind }) => at.challenge.kit.kinds.find(({ id }) => id === kind)!.name);
    await holdsBuild(placed, built.value.pieces, kinds);
  }
});

it('pieces on their sides, upside down and turned', async () => {
  const made = {
    drum: makeSolid({ solid: 'cylinder', sizes: { radius: 30, height: 70 } }),
    tent: makeSolid({ solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } }),
    tip: makeSolid({ solid: 'cone-frustum', sizes: { radius: 35, topRadius: 13, height: 50 } }),
  };
  const solids = new Map(Object.entries(made).flatMap(([kind, one]) => (one.ok ? [[kind, one.value] as const] : [])));
  const laid: LaidPiece[] = [
    { kind: 'drum', resting: 'side', xMm: 13, yMm: -7, turnRad: 0.3 },
    { kind: 'tip', resting: 'side', xMm: 170, yMm: 11, turnRad: 2.5 },
    { kind: 'tip', resting: 'top', xMm: -150, yMm: 35, turnRad: 0 },
    { kind: 'tent', resting: 'base', xMm: -150, yMm: 37, turnRad: 1.1 },
  ];
  const built = buildStack(laid, solids, 0);
  if (!built.ok) throw new RangeError(JSON.stringify(built.issues));
  const { pieces } = built.value;
  const kinds = pieces.map(({ kind }) => kind);
  await holdsBuild(
    pieces.map((piece) => ({ ...piece, name: piece.kind })),
    pieces,
    kinds,
  );
});

it('nothing to save: a try that is not laid out, and one whose pieces are in each other', () => {
  const [first] = RECORD.attempts as [Attempt];
  const numbers: Attempt = { ...first, layout: { kind: 'numbers-only', pieces: ['cube'] } };
  const cube: LaidPiece = { kind: 'cube', resting: 'base', xMm: 3, yMm: 5, turnRad: 0 };
  const inside: Attempt = { ...first, layout: { kind: 'laid-out', pieces: [cube, { ...cube, on: 'table' }] } };
  for (const attempt of [numbers, inside]) {
    const record = { ...RECORD, attempts: [attempt, ...RECORD.attempts.slice(1)] };
    expect(placedPieces(atOf(record, attempt))).toBeNull();
  }
});

async function holdsBuild(
  named: readonly NamedPiece[],
  pieces: readonly PlacedPiece[],
  kinds: readonly string[],
): Promise<void> {
  const { json, parts } = readGlb(await write('glb', named));
  expect(parts.map(({ name }) => name)).toEqual(kinds);
  const solids = new Set(pieces.map(({ solid }) => solid));
  expect(json.meshes.length, 'pieces of one kind share a mesh').toBe(solids.size);
  const { triangles } = readStl(await write('stl', named));
  const counts = parts.map((part) => part.triangles.length);
  const stlParts = counts.map((count, k) => {
    const start = counts.slice(0, k).reduce((sum, one) => sum + one, 0);
    return triangles.slice(start, start + count);
  });
  expect(triangles.length).toBe(counts.reduce((sum, one) => sum + one, 0));
  for (const [k, piece] of pieces.entries()) {
    checkClosed(stlParts[k]!);
    liesAt(piece, stlParts[k]!);
    liesAt(piece, parts[k]!.triangles.map(inMm));
  }
}

/** From metres with y up. */
const inMm = ([a, b, c]: Triangle): Triangle => [onTable(a), onTable(b), onTable(c)];
const onTable = ([x, y, z]: Vec3): Vec3 => [1000 * x, -1000 * z, 1000 * y];

/** In every direction the piece reaches as far as its triangles do, but for the sagitta; and it is all there. */
function liesAt(piece: PlacedPiece, triangles: readonly Triangle[]): void {
  const inside = sagittaMm(piece.solid) ?? 0;
  const corners = triangles.flat();
  for (const direction of DIRECTIONS) {
    const reached = Math.max(...corners.map((corner) => dot(corner, direction)));
    const outMm = dot(supportPoint(piece.body, direction), direction) - reached;
    expect(outMm, piece.kind).toBeGreaterThanOrEqual(-ROUNDING_MM);
    expect(outMm, piece.kind).toBeLessThanOrEqual(inside + ROUNDING_MM);
  }
  const volume = integrate(triangles).volume;
  expectNear(volume, piece.solid.volumeMm3, {
    absolute: inside * piece.solid.surfaceMm2 + ROUNDING_MM * piece.solid.surfaceMm2,
  });
}

/** In no special relation to any piece: a spiral round the ball. */
const DIRECTIONS: readonly Vec3[] = Array.from({ length: 30 }, (_, k): Vec3 => {
  const z = 1 - (2 * k + 1) / 30;
  const r = Math.sqrt(1 - z * z);
  return [r * Math.cos(2.4 * k), r * Math.sin(2.4 * k), z];
});

const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
