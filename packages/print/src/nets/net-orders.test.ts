// Nets as a kit asks for them.

import type { Solid, SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import { printWords } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { netSheets } from './net-sheets.ts';
import type { NetKind, NetSheets } from './order.ts';

const solidOf = (spec: SolidSpec): Solid => {
  const made = makeSolid(spec);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
};

const TOWER = solidOf({ solid: 'regular-prism', sizes: { sides: 5, edge: 20, height: 70 } });
const DRUM = solidOf({ solid: 'cylinder', sizes: { radius: 20, height: 50 } });

function sheetsOf(kinds: readonly NetKind[]): NetSheets {
  const order = { kinds, paper: 'a4', arrange: 'masters', tabDepthMm: 8, large: 'tell' } as const;
  const sheets = netSheets(order, printWords('en'), () => true);
  if (!sheets.ok || sheets.value === null) throw new Error(JSON.stringify(sheets));
  return sheets.value;
}

/** Lines to cut, and lines to fold above the foot, on all pages. */
function linesOn({ pages }: NetSheets): { readonly cuts: number; readonly folds: number } {
  const strokes = pages.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'stroke'));
  const cuts = strokes.filter(({ path }) => path.closed).length;
  return { cuts, folds: strokes.filter(({ path, dashMm }) => dashMm.length > 0 && path.start[1] > 22).length };
}

it('a kind with a long name takes no other kind its foot, which says how often that page is needed', () => {
  const long = 'Long tower '.repeat(9).trim();
  const sheets = sheetsOf([
    { id: 'tower', name: long, solid: TOWER, count: 1 },
    { id: 'drum', name: 'Drum', solid: DRUM, count: 7 },
  ]);
  const feet = sheets.pages.map(({ marks }) => marks.flatMap((mark) => (mark.kind === 'writing' ? [mark.text] : [])));
  expect(feet[0]).toContain('Nets');
  expect(feet[1]).toContain(`Nets: Drum (this page ${sheets.copies[1]} times)`);
});

describe('a kind that is left open at its base', () => {
  it('has its net without that base', () => {
    const prism = (base: NetKind['base']) => {
      const sheets = sheetsOf([{ id: 'tower', name: 'Tower', solid: TOWER, count: 1, ...(base && { base }) }]);
      const { cuts, folds } = linesOn(sheets);
      expect(cuts).toBe(sheets.counts.get('tower'));
      return folds / cuts;
    };
    // Seven faces hang together at six folds and nine tabs close the other edges; without the base there are five tabs at
    // the walls and the top, and five folds.
    expect([prism('closed'), prism(undefined), prism('open')]).toEqual([15, 15, 10]);
  });

  it('has no disc for it', () => {
    const drum = (base: 'closed' | 'open') => {
      const sheets = sheetsOf([{ id: 'drum', name: 'Drum', solid: DRUM, count: 1, base }]);
      return linesOn(sheets).cuts / (sheets.counts.get('drum') ?? 0);
    };
    expect([drum('closed'), drum('open')]).toEqual([3, 2]);
  });
});
