// A tower of five measured by hand: every measure, every way of counting; and what is refused. Lengths mm.

import { describe, expect, it } from 'vitest';
import {
  box,
  expectFacts,
  factsOf,
  kit,
  laid,
  measuredFact,
  PLAIN,
  put,
} from '../../../../tests/reference/measured-builds.ts';
import { MEASURES } from './catalogue.ts';
import { measureBuild } from './measure-build.ts';

const { PI, sqrt } = Math;

describe('a tower of five: slab, drum, brick, stub, tip', () => {
  const kinds = kit({
    slab: box(90, 60, 25),
    drum: { solid: 'cylinder', sizes: { radius: 20, height: 35 } },
    brick: box(44, 42, 28),
    stub: { solid: 'cone-frustum', sizes: { radius: 15, topRadius: 9, height: 32 } },
    tip: { solid: 'cone', sizes: { radius: 8, height: 27 } },
  });
  const tower = laid(put('slab', 0, 0), put('drum', 5, 3), put('brick', 5, 3), put('stub', 2, 1), put('tip', 2, 1));
  const facts = factsOf(tower, kinds, PLAIN);
  // Slant of the stub: sqrt(6^2 + 32^2) = sqrt(1060); of the tip: sqrt(8^2 + 27^2) = sqrt(793).
  const surface =
    2 * (90 * 60 + 90 * 25 + 60 * 25) +
    2 * PI * 20 * (20 + 35) +
    2 * (44 * 42 + 44 * 28 + 42 * 28) +
    PI * (15 ** 2 + 9 ** 2 + (15 + 9) * sqrt(1060)) +
    PI * 8 * (8 + sqrt(793));

  it('has the height, footprint and base of its parts', () => {
    expectFacts(facts, {
      height: 25 + 35 + 28 + 32 + 27,
      'footprint-area': 90 * 60, // all above lies inside the slab
      'footprint-perimeter': 2 * (90 + 60),
      'footprint-inner-perimeter': 0,
      'footprint-parts': 1,
      'base-area': 90 * 60,
      'base-perimeter': 2 * (90 + 60),
      'base-width': 60,
      'courtyard-area': 0,
      'hull-area': 90 * 60,
    });
  });

  it('adds up volume and paper', () => {
    expectFacts(facts, {
      volume:
        90 * 60 * 25 +
        PI * 20 ** 2 * 35 +
        44 * 42 * 28 +
        ((PI * 32) / 3) * (15 ** 2 + 15 * 9 + 9 ** 2) +
        (PI * 8 ** 2 * 27) / 3,
      paper: surface,
    });
  });

  it('loses both sides of every contact, and what lies on the table once', () => {
    // Drum on slab and brick on drum: the whole disc of radius 20. Stub on brick: radius 15. Tip on stub: radius 8.
    const contacts = PI * (20 ** 2 + 20 ** 2 + 15 ** 2 + 8 ** 2);
    expectFacts(facts, { 'touchable-surface': surface - 2 * contacts - 90 * 60 });
  });

  it('shows the height as the sum of five heights, from the table up', () => {
    const { working } = measuredFact(facts, 'height');
    expect(working.method).toBe('sum-of-pieces');
    expect(working.parts.map(({ kind }) => kind)).toEqual(['slab', 'drum', 'brick', 'stub', 'tip']);
    expect(working.steps).toHaveLength(1);
  });

  it('counts pieces, kinds, faces, edges and vertices', () => {
    expectFacts(facts, {
      pieces: 5,
      kinds: 5,
      'flat-faces': 6 + 2 + 6 + 2 + 1,
      'curved-surfaces': 1 + 1 + 1,
      'straight-edges': 12 + 12,
      'curved-edges': 2 + 2 + 1,
      vertices: 8 + 8,
    });
  });

  it.each([
    ['flat-only', 17, 24, 16],
    ['flat-and-curved-apart', 17, 24, 17],
    ['all-surfaces', 20, 29, 17],
  ] as const)('counts faces, edges and corners the way %s says', (counting, faces, edges, corners) => {
    expectFacts(factsOf(tower, kinds, { ...PLAIN, counting }), { faces, edges, corners });
  });

  it('gives every measure of the catalogue once, in its order', () => {
    expect([...facts.keys()]).toEqual(MEASURES.map(({ id }) => id));
    expect(facts.size).toBe(26);
  });
});

describe('refusals', () => {
  const kinds = kit({ brick: box(60, 40, 30), wrong: box(60, -40, 30) });

  it('an unknown kind in a list of pieces, by its place', () => {
    const measured = measureBuild({ kind: 'numbers-only', pieces: ['brick', 'brock'] }, kinds, PLAIN);
    expect(measured).toEqual({
      ok: false,
      issues: [{ code: 'kind-unknown', path: ['pieces', 1], details: { kind: 'brock' } }],
    });
  });

  it('impossible sizes of a kind that is used, and only of these', () => {
    const used = measureBuild({ kind: 'numbers-only', pieces: ['wrong'] }, kinds, PLAIN);
    expect(used.ok ? [] : used.issues.map(({ code, path }) => [code, path])).toEqual([
      ['size-not-positive', ['kinds', 'wrong', 'sizes', 'width']],
    ]);
    expect(measureBuild({ kind: 'numbers-only', pieces: ['brick'] }, kinds, PLAIN).ok).toBe(true);
  });

  it('a traced outline with a corner nowhere', () => {
    const points = [
      [0, 0],
      [70, Number.NaN],
      [70, 30],
    ] as const;
    const outline = { outline: { kind: 'polygon', points }, planeMm: 0, onTable: true } as const;
    const measured = measureBuild({ kind: 'traced', outlines: [outline], pieces: ['brick'] }, kinds, PLAIN);
    expect(measured).toEqual({
      ok: false,
      issues: [{ code: 'position-not-finite', path: ['outlines', 0], details: { value: 'NaN' } }],
    });
  });

  it('what the stack refuses', () => {
    const clash = laid(put('brick', 0, 0), { ...put('brick', 7, 0), on: 'table' });
    const measured = measureBuild(clash, kinds, PLAIN);
    expect(measured.ok ? [] : measured.issues.map(({ code }) => code)).toEqual(['overlaps']);
  });
});
