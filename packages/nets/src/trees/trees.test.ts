// The trees by which solids are laid out: one for every solid of the catalogue, the same at every size, and no overlap.

import type { SolidId } from '@cairnmark/geometry';
import { CATALOGUE, definitionOf } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../tests/reference/seeded.ts';
import { made, solidOf } from '../../../../tests/reference/solid-cases.ts';
import { makeNet } from '../make-net.ts';
import { overlapsItself, sheetsOf } from '../unfold/choose.ts';
import type { FaceTable } from '../unfold/faces.ts';
import { across, faceTable } from '../unfold/faces.ts';
import type { Joint } from '../unfold/unfold.ts';
import { unfold } from '../unfold/unfold.ts';
import { RECIPES } from './catalogue.ts';
import { treesFor } from './trees-for.ts';

describe('every solid of the catalogue says how its paper is cut', () => {
  test('no solid is left out', () => {
    expect(leftOut(Object.keys(CATALOGUE))).toEqual([]);
  });

  test('a solid that is left out is told, with what to add', () => {
    expect(leftOut(['cube', 'pebble'])).toEqual([
      'The solid pebble has no net: add how it is cut as a file in packages/nets/src/trees/, or as kind none when nobody folds it, and its line in catalogue.ts there.',
    ]);
  });

  test.each(Object.keys(CATALOGUE) as SolidId[])('%s is cut as its surface allows', (id) => {
    const { curvedSurfaces } = made(definitionOf(id), definitionOf(id).example);
    const [curved] = curvedSurfaces;
    const expected = curved === undefined ? 'faces' : curved.net === 'none' ? 'none' : 'round';
    expect(RECIPES[id].kind).toBe(expected);
  });
});

const flatFaced = Object.values(CATALOGUE).filter(({ id }) => RECIPES[id].kind === 'faces');

test.each(flatFaced)('$id: the same faces hang together at every size', ({ id, example }) => {
  const folds = [0.5, 1, 3].map((mm) => foldsOf(id, example, mm));
  expect(folds[0]!.length).toBeGreaterThan(2);
  expect(folds[1]).toEqual(folds[0]);
  expect(folds[2]).toEqual(folds[0]);
});

test.each(flatFaced)('$id: every tree, usual or spare, takes every face in and overlaps nowhere', (definition) => {
  const recipe = RECIPES[definition.id];
  if (recipe.kind !== 'faces') return;
  const table = faceTable(made(definition, definition.example));
  const trees = treesFor(recipe, table, 'closed');
  const { usual, others } = sheetsOf(table, trees);
  expect([usual, ...others]).toHaveLength(trees.usual.length + trees.spare.length);
  for (const { faces } of [usual, ...others]) expect(faces).toHaveLength(table.faces.length);
});

const SEED = 60201;

test(`a low frustum cut along any edges often overlaps, and that is seen (seed ${SEED})`, () => {
  const sizes = { sides: 3, edge: 60, topEdge: 20, height: 1 };
  const table = faceTable(solidOf({ solid: 'regular-frustum', sizes }));
  const draw = seeded(SEED);
  const drawn = Array.from({ length: 400 }, () => overlapsItself(unfold(table, 0, { joints: anyTree(table, draw) })));
  const share = drawn.filter((one) => one).length / drawn.length;
  // An earlier trial found a quarter.
  expect(share).toBeGreaterThan(0.15);
  expect(share).toBeLessThan(0.35);
});

test('a joint between faces that have no side in common is refused', () => {
  const table = faceTable(solidOf({ solid: 'cube', sizes: { edge: 30 } }));
  expect(() => unfold(table, 0, { joints: [[0, 1]] })).toThrow(RangeError);
});

const leftOut = (ids: readonly string[]): readonly string[] =>
  ids
    .filter((id) => !Object.hasOwn(RECIPES, id))
    .map(
      (id) =>
        `The solid ${id} has no net: add how it is cut as a file in packages/nets/src/trees/, or as kind none when nobody folds it, and its line in catalogue.ts there.`,
    );

function foldsOf(id: SolidId, sizes: Readonly<Record<string, number>>, mm: number): readonly Joint[] {
  const net = makeNet(solidOf({ solid: id, sizes }, mm), { tabDepthMm: 8 });
  if (!net.ok) throw new Error(`${id} has no net`);
  return net.value.parts.flatMap(({ folds }) => folds.flatMap((fold) => (fold.kind === 'face' ? [fold.between] : [])));
}

/** A tree drawn by lot: of all sides of laid faces one is taken that leads to a face not yet laid, again and again. */
function anyTree(table: FaceTable, draw: () => number): readonly Joint[] {
  const [joints, laid]: [Joint[], number[]] = [[], [0]];
  while (laid.length < table.faces.length) {
    const ways = laid.flatMap((face) =>
      table.faces[face]!.corners.map((_, side): Joint => [face, across(table, face, side)]),
    );
    const open = ways.filter(([, child]) => !laid.includes(child));
    const way = open[Math.floor(draw() * open.length)]!;
    joints.push(way);
    laid.push(way[1]);
  }
  return joints;
}
