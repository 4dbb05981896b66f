// The way of a piece from hand to build. A px of the page is a mm of the table here, counted from its middle.

import type { Command, Pieces } from '@cairnmark/editing';
import { edit } from '@cairnmark/editing';
import { makeSolid } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Dragging } from './drag-picture.ts';
import type { Sight } from './hand-place.ts';
import { createSceneDrag } from './scene-drag.ts';

const cube = makeSolid({ solid: 'cube', sizes: { edge: 50 } });
if (!cube.ok) throw new RangeError('a cube of 5 cm');
const bench = { solids: new Map([['cube', cube.value]]), stock: new Map([['cube', 2]]), slackMm: 0 };
const grip = { by: [0, 0, 0], through: [0, 0, 0] } as const;
const shelf = { kind: 'cube', resting: null };

/** Looks straight down on a table of 800 by 800. */
const sight: Sight = {
  isLevel: false,
  nearest: (x, y) => {
    const place = [Math.min(400, Math.max(-400, x)), Math.min(400, Math.max(-400, y))] as const;
    return { place, isInside: place[0] === x && place[1] === y };
  },
  pick: (x, y) => ({ point: [x, -y, 0], surfaceMm: 0 }),
  dragPlanePoint: (_x, _y, through) => through,
};

function at(...xs: readonly number[]) {
  const pieces: Pieces = xs.map((xMm) => ({ kind: 'cube', resting: 'base', xMm, yMm: 0, turnRad: 0 }));
  const said: string[] = [];
  const shown: (Dragging | null)[] = [];
  const commands: Command[] = [];
  let preview: Pieces | null = null;
  const drag = createSceneDrag(() => ({
    editor: {
      pieces,
      bench,
      pick: (piece) => said.push(`picked ${piece}`),
      hush: () => said.push('hushed'),
      edit: (command) => commands.push(command),
      refuse: (why) => said.push(why),
    },
    sight,
    lineUp: 'free',
    show: (dragging) => shown.push(dragging),
    preview: (next) => {
      preview = next;
    },
    label: (why) => `because ${why}`,
  }));
  return { pieces, drag, said, commands, ghost: () => shown.at(-1)?.ghost ?? null, preview: () => preview };
}

describe('a piece that is dragged', () => {
  it('shows where it will settle, in numbers too, and is put there', () => {
    const { pieces, drag, commands, ghost, preview } = at(0);
    drag.take(0, grip, [0, 0]);
    drag.move([100, 0]);
    expect(ghost()).toMatchObject({ isRefused: false, label: null, piece: { shift: [100, expect.closeTo(0, 9), 0] } });
    expect(preview()).toMatchObject([{ xMm: 100 }]);
    expect(drag.drop()).toBe(true);
    expect([ghost(), preview()]).toEqual([null, null]);
    const [command] = commands;
    expect(command).toMatchObject({
      do: 'move-to',
      piece: 0,
      spot: { xMm: 100, yMm: expect.closeTo(0, 9), surfaceMm: 0 },
    });
    expect(command === undefined ? null : edit(pieces, command, bench)).toMatchObject({ ok: true });
  });

  it('shaken by less than 6 px it was only touched', () => {
    const { drag, commands, said } = at(0);
    drag.take(0, grip, [0, 0]);
    drag.move([3, 3]);
    expect(drag.drop()).toBe(false);
    expect([commands, said]).toEqual([[], []]);
  });

  it('off the table it is seen at the edge, says why, and letting go only tells so', () => {
    const { drag, commands, said, ghost, preview } = at(0);
    drag.take(0, grip, [0, 0]);
    drag.move([900, 0]);
    expect(ghost()).toMatchObject({
      isRefused: true,
      label: 'because off-table',
      piece: { shift: [400, expect.closeTo(0, 9), 0] },
    });
    expect(preview()).toBeNull();
    drag.drop();
    expect([commands, said.at(-1)]).toEqual([[], 'off-table']);
  });

  it('of which none is left is seen where it is held, says why, and letting go only tells so', () => {
    const { drag, commands, said, ghost } = at(0, 0);
    drag.take(shelf, grip, [500, 0]);
    drag.move([100, 0]);
    expect(ghost()).toMatchObject({
      isRefused: true,
      label: 'because none-left',
      piece: { shift: [100, expect.closeTo(0, 9), 0] },
    });
    drag.drop();
    expect([commands, said.at(-1)]).toEqual([[], 'none-left']);
  });

  it('from the shelf and not yet over the scene is not seen, and letting go there is no more than that', () => {
    const { drag, commands, said, ghost } = at(0);
    drag.take(shelf, grip, [500, 0]);
    drag.move([520, 0]);
    expect(ghost()).toBeNull();
    drag.drop();
    expect([commands, said]).toEqual([[], ['hushed']]);
  });

  it('given up leaves all as it was', () => {
    const { drag, commands, said, ghost } = at(0);
    drag.take(0, grip, [0, 0]);
    drag.move([100, 0]);
    expect(drag.give()).toBe(true);
    drag.move([200, 0]);
    expect(drag.drop()).toBe(false);
    expect([commands, said, ghost()]).toEqual([[], ['picked 0', 'hushed'], null]);
  });

  it('belongs to the build that it began in', () => {
    const { drag, pieces } = at(0);
    expect(drag.isOf([])).toBe(true);
    drag.take(0, grip, [0, 0]);
    expect([drag.isOf(pieces), drag.isOf([])]).toEqual([true, false]);
  });
});
