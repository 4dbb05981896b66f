// Names beside the dots of a scatter plot, and beside the ends of lines, so that none lies on another. px, y down.

export interface Labelled {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
}

/** Where a name stands by its dot: its middle off that of the dot, px, and which end of it is there. */
export interface Side {
  readonly dx: number;
  readonly dy: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The side of each name; null: there is no free place, and the name stands in the table alone. `heightPx`: of a line of text. */
export function labelPlaces(
  dots: readonly Labelled[],
  heightPx: number,
  room: { readonly widthPx: number; readonly heightPx: number },
): readonly (Side | null)[] {
  const taken: Box[] = dots.map(({ x, y }) => around(x, y, DOT_PX));
  return dots.map((dot, k) => {
    const own = taken[k];
    const side = sidesFor(heightPx).find((one) => {
      const box = boxAt(dot, one, heightPx);
      const isInside = box.left >= 0 && box.top >= 0 && box.right <= room.widthPx && box.bottom <= room.heightPx;
      return isInside && !taken.some((other) => other !== own && isOver(box, other));
    });
    if (side === undefined) return null;
    taken.push(boxAt(dot, side, heightPx));
    return side;
  });
}

/** Heights pushed apart to `apartPx`, in their order and as near to where they were as can be, between `top` and `bottom`. */
export function spread(ys: readonly number[], apartPx: number, top: number, bottom: number): readonly number[] {
  const order = ys.map((y, k) => ({ y, k })).sort((a, b) => a.y - b.y || a.k - b.k);
  // With the room of those before it taken off, each height may only not fall: neighbours that do are put at their mean.
  const runs: { sum: number; count: number }[] = [];
  for (const [place, { y }] of order.entries()) {
    runs.push({ sum: y - place * apartPx, count: 1 });
    for (let last = runs.at(-1), before = runs.at(-2); last && before; last = runs.at(-1), before = runs.at(-2)) {
      if (before.sum / before.count <= last.sum / last.count) break;
      runs.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
    }
  }
  const most = bottom - (order.length - 1) * apartPx;
  const kept = runs.flatMap(({ sum, count }) =>
    Array.from({ length: count }, () => Math.max(top, Math.min(most, sum / count))),
  );
  const result = new Array<number>(ys.length).fill(0);
  for (const [place, { k }] of order.entries()) result[k] = (kept[place] ?? 0) + place * apartPx;
  return result;
}

/** px. Half the side of a dot, and between a dot and its name. */
const DOT_PX = 7;
const BESIDE_PX = 11;

/** The nearest first: beside it, above and below it, and at its corners. */
function sidesFor(heightPx: number): readonly Side[] {
  const up = BESIDE_PX + heightPx / 2;
  return [
    { dx: BESIDE_PX, dy: 0, anchor: 'start' },
    { dx: -BESIDE_PX, dy: 0, anchor: 'end' },
    { dx: 0, dy: -up, anchor: 'middle' },
    { dx: 0, dy: up, anchor: 'middle' },
    ...[0.75, -0.75].flatMap((turn): readonly Side[] => [
      { dx: BESIDE_PX, dy: turn * up, anchor: 'start' },
      { dx: -BESIDE_PX, dy: turn * up, anchor: 'end' },
    ]),
  ];
}

function boxAt({ x, y, widthPx }: Labelled, { dx, dy, anchor }: Side, heightPx: number): Box {
  const left = x + dx - (anchor === 'start' ? 0 : anchor === 'end' ? widthPx : widthPx / 2);
  return { left, right: left + widthPx, top: y + dy - heightPx / 2, bottom: y + dy + heightPx / 2 };
}

const around = (x: number, y: number, px: number): Box => ({
  left: x - px,
  right: x + px,
  top: y - px,
  bottom: y + px,
});

const isOver = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
