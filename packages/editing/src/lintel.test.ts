// Under a lintel, between storeys, and what stands on a piece that is moved. By hand, mm.

import { describe, expect, it } from 'vitest';
import { benchOf, done, follow, stackAt } from '../../../tests/reference/edited-builds.ts';
import { box, put } from '../../../tests/reference/stacked-builds.ts';
import type { Ghost } from './drag.ts';
import { dragOf, settle } from './drag.ts';
import type { Bench, FromShelf, Pieces, Spot } from './types.ts';

const over = benchOf(
  { post: box(20, 20, 50), tall: box(20, 20, 51.5), tile: box(30, 30, 5), slab: box(120, 40, 10) },
  9,
);
const shelf = (kind: string): FromShelf => ({ kind, resting: null });
const at = (xMm: number, yMm: number, surfaceMm: number | null): Spot => ({ xMm, yMm, surfaceMm, lineUp: 'free' });

const bridge: Pieces = [put('post', -40, 0), put('post', 40, 0), put('slab', 0, 0)];

function ghost(pieces: Pieces, what: number | FromShelf, spot: Spot, bench: Bench = over): Ghost {
  const settled = settle(pieces, what, spot, bench);
  if (!settled.ok) throw new Error(JSON.stringify(settled.issues));
  return settled.value;
}
const bottoms = (pieces: Pieces, bench: Bench = over): readonly number[] =>
  stackAt(pieces, bench).pieces.map(({ bottomMm }) => bottomMm);

describe('a lintel on two posts', () => {
  it('a third post goes under it, before it in the order', () => {
    const { index, earlier, bottomMm, topMm, restsOn, pieces } = ghost(bridge, shelf('post'), at(3, -5, 0));
    expect({ index, earlier, bottomMm, topMm, restsOn }).toEqual({
      index: 2,
      earlier: true,
      bottomMm: 0,
      topMm: 50,
      restsOn: ['table'],
    });
    expect(bottoms(pieces)).toEqual([0, 0, 0, 50]);
    const carried = stackAt(pieces, over).supports.filter(({ upper }) => upper === 3);
    expect(carried.map(({ lower }) => lower).sort()).toEqual([0, 1, 2]);
  });

  it('where nothing was pointed at, or the lintel itself, it lies on top', () => {
    for (const surfaceMm of [null, 60]) {
      const { index, earlier, bottomMm, restsOn } = ghost(bridge, shelf('post'), at(0, 0, surfaceMm));
      expect({ index, earlier, bottomMm, restsOn }).toEqual({ index: 3, earlier: false, bottomMm: 60, restsOn: [2] });
    }
  });

  it('a post 1.5 mm too tall lies on top without slack; within the slack it goes under and lifts the lintel', () => {
    expect(ghost(bridge, shelf('tall'), at(0, 0, 0)).bottomMm).toBe(60);
    const slack = { ...over, slackMm: 2 };
    const under = ghost(bridge, shelf('tall'), at(0, 0, 0), slack);
    expect([under.index, under.earlier]).toEqual([2, true]);
    expect(bottoms(under.pieces, slack)).toEqual([0, 0, 0, 51.5]);
  });

  it('half into a post it finds no room, and lies on top', () => {
    expect(ghost(bridge, shelf('post'), at(-30, 0, 0))).toMatchObject({ index: 3, bottomMm: 60 });
  });

  it('a small piece lies free under it', () => {
    expect(ghost(bridge, shelf('tile'), at(0, 0, 0))).toMatchObject({ index: 2, bottomMm: 0, topMm: 5, earlier: true });
  });

  it('beyond its end the order stays', () => {
    expect(ghost(bridge, shelf('post'), at(75, 0, 0))).toMatchObject({ index: 3, bottomMm: 0, earlier: false });
  });
});

describe('storeys', () => {
  const storeys: Pieces = [...bridge, put('post', -40, 0), put('post', 40, 0), put('slab', 0, 0)];

  it('on the middle slab, under the upper one', () => {
    const { index, bottomMm, restsOn, earlier } = ghost(storeys, shelf('tile'), at(0, 0, 60));
    expect({ index, bottomMm, restsOn, earlier }).toEqual({ index: 5, bottomMm: 60, restsOn: [2], earlier: true });
  });

  it('on the table, under both', () => {
    expect(ghost(storeys, shelf('post'), at(0, 0, 0))).toMatchObject({ index: 2, bottomMm: 0 });
  });

  it('put on the middle slab by its number too', () => {
    const edited = done([...storeys, put('tile', 200, 0)], { do: 'put-on', piece: 6, of: 2 }, over);
    expect([edited.piece, edited.earlier]).toEqual([5, true]);
    expect(bottoms(edited.pieces)).toEqual([0, 0, 50, 60, 60, 60, 110]);
  });

  it('a surface between two floors is none', () => {
    expect(ghost(storeys, shelf('tile'), at(0, 0, 33))).toMatchObject({ index: 6, bottomMm: 120 });
  });
});

describe('a piece of the build', () => {
  it('the lowest of a tower, nudged, stays under what it carries', () => {
    const tower: Pieces = [put('post', 0, 0), put('post', 0, 0), put('tile', 0, 0)];
    const nudged = ghost(tower, 0, at(4, 0, 0));
    expect([nudged.index, nudged.earlier]).toEqual([0, false]);
    expect(bottoms(nudged.pieces)).toEqual([0, 50, 100]);
  });

  it('taken away from there, lets the others down', () => {
    const tower: Pieces = [put('post', 0, 0), put('post', 0, 0), put('tile', 0, 0)];
    const away = ghost(tower, 0, at(100, 0, 0));
    expect([away.index, away.earlier]).toEqual([2, false]);
    expect(bottoms(away.pieces)).toEqual([0, 50, 0]);
  });

  it('from the middle of a tower it goes back under what it carried, not under what came to lie there instead', () => {
    const pieces: Pieces = [
      put('post', 0, 0),
      put('post', -10, 0),
      put('slab', 0, 0),
      put('post', 10, 0),
      put('slab', 0, 0),
    ];
    expect(bottoms(pieces)).toEqual([0, 50, 100, 110, 160]);
    expect(bottoms(dragOf(pieces, 2, over).others)).toEqual([0, 50, 50, 100]);
    const back = ghost(pieces, 2, at(1, 0, 100));
    expect([back.index, back.earlier]).toEqual([2, false]);
    expect(bottoms(back.pieces)).toEqual([0, 50, 100, 110, 160]);
  });

  it('a post pulled from a bridge and put back is where it was', () => {
    expect(ghost(bridge, 1, at(40, 0, 0)).pieces).toEqual(bridge);
    expect(dragOf(bridge, 1, over).others).toEqual([bridge[0], bridge[2]]);
  });

  it('moved by command, says that it came earlier', () => {
    const edited = done([...bridge, put('post', 200, 0)], { do: 'move-to', piece: 3, spot: at(0, 0, 0) }, over);
    expect([edited.piece, edited.earlier]).toEqual([2, true]);
  });
});

describe('what loses its footing', () => {
  it('falls onto a piece that was put on the table under it, which then comes first', () => {
    const arm: Pieces = [put('post', 0, 0), put('slab', 40, 0), put('tile', 60, 0, { on: 'table' })];
    const { pieces, piece } = done(arm, { do: 'take-off', piece: 0 }, over);
    expect(pieces).toEqual([arm[2], arm[1]]);
    expect(piece).toBeNull();
    expect(bottoms(pieces)).toEqual([0, 5]);
  });

  it('so too when what held it is shifted away', () => {
    const arm: Pieces = [put('post', 0, 0), put('slab', 40, 0), put('tile', 60, 0, { on: 'table' })];
    const pieces = follow(arm, [{ do: 'shift', pieces: [0], xMm: -100, yMm: 0 }], over);
    expect(pieces).toEqual([put('post', -100, 0), arm[2], arm[1]]);
  });
});
