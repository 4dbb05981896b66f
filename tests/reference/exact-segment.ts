// Segments between grid points, and questions about them answered exactly. A point on a segment is a fraction of its
// length; points of the plane have a common denominator. Floating point is used only to rule out what is far off.

/** Ends in grid units: whole numbers below 2^53, so doubles hold them. */
export interface Segment {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/** `below` is positive. */
export interface Fraction {
  readonly above: bigint;
  readonly below: bigint;
}

/** (x / below, y / below), with its nearest double beside it. */
export interface Place {
  readonly x: bigint;
  readonly y: bigint;
  readonly below: bigint;
  readonly nearX: number;
  readonly nearY: number;
}

export function segmentsOf(ring: readonly (readonly [number, number])[], grid: number): readonly Segment[] {
  return ring
    .map(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      return {
        ax: Math.round(ax / grid),
        ay: Math.round(ay / grid),
        bx: Math.round(bx / grid),
        by: Math.round(by / grid),
      };
    })
    .filter(({ ax, ay, bx, by }) => ax !== bx || ay !== by);
}

/** The places on a segment, rising, where others meet it; its two ends among them. */
export function cutsOf(segment: Segment, all: readonly Segment[]): readonly Fraction[] {
  const cuts: Fraction[] = [
    { above: 0n, below: 1n },
    { above: 1n, below: 1n },
  ];
  for (const other of all) {
    if (other === segment || boxesApart(segment, other)) continue;
    const startLeft = leftOf(other, segment.ax, segment.ay);
    const endLeft = leftOf(other, segment.bx, segment.by);
    if (startLeft === 0n && endLeft === 0n)
      cuts.push(along(segment, other.ax, other.ay), along(segment, other.bx, other.by));
    else if (startLeft > 0n !== endLeft > 0n || startLeft === 0n || endLeft === 0n) {
      const otherStart = leftOf(segment, other.ax, other.ay);
      const otherEnd = leftOf(segment, other.bx, other.by);
      const meets = otherStart * otherEnd <= 0n;
      if (meets) cuts.push(positive(startLeft, startLeft - endLeft));
    }
  }
  const inside = cuts.filter(({ above, below }) => above >= 0n && above <= below);
  inside.sort((a, b) => Number(sign(a.above * b.below - b.above * a.below)));
  return inside.filter((cut, k) => {
    const before = inside[k - 1];
    return before === undefined || cut.above * before.below !== before.above * cut.below;
  });
}

/** The point half-way between two places on a segment. */
export function middleOf({ ax, ay, bx, by }: Segment, from: Fraction, to: Fraction): Place {
  const below = 2n * from.below * to.below;
  const above = from.above * to.below + to.above * from.below;
  const x = BigInt(ax) * below + BigInt(bx - ax) * above;
  const y = BigInt(ay) * below + BigInt(by - ay) * above;
  const part = Number(above) / Number(below);
  return { x, y, below, nearX: ax + (bx - ax) * part, nearY: ay + (by - ay) * part };
}

export function isOn(segment: Segment, place: Place): boolean {
  const { nearX: x, nearY: y } = place;
  const { ax, ay, bx, by } = segment;
  const isNear =
    x >= Math.min(ax, bx) - 1 && x <= Math.max(ax, bx) + 1 && y >= Math.min(ay, by) - 1 && y <= Math.max(ay, by) + 1;
  if (!isNear || leftOfPlace(segment, place) !== 0n) return false;
  const within = (v: bigint, a: number, b: number): boolean =>
    v >= BigInt(Math.min(a, b)) * place.below && v <= BigInt(Math.max(a, b)) * place.below;
  return within(place.x, ax, bx) && within(place.y, ay, by);
}

/**
 * How often a ring goes round the point just beside `place`, which lies inside a part of the segment `on`: on its left for
 * `side` 1, on its right for -1. Counts what a ray to the right crosses; the point is never a corner of the arrangement.
 */
export function turnsAround(ring: readonly Segment[], place: Place, on: Segment, side: 1 | -1): number {
  const level = on.ay === on.by;
  // Beside a level segment the point is a little higher or lower; beside any other a little to the left or right.
  const isHigher = level && on.bx > on.ax === side > 0;
  const isLefter = !level && on.by > on.ay === side > 0;
  let turns = 0;
  for (const segment of ring) {
    const { ay, by } = segment;
    if (ay === by || Math.max(ay, by) < place.nearY - 1 || Math.min(ay, by) > place.nearY + 1) continue;
    const up = by > ay;
    const [low, high] = up ? [ay, by] : [by, ay];
    const aboveLow = place.y - BigInt(low) * place.below;
    const belowHigh = BigInt(high) * place.below - place.y;
    const spans = level && !isHigher ? aboveLow > 0n && belowHigh >= 0n : aboveLow >= 0n && belowHigh > 0n;
    if (!spans) continue;
    if (place.nearX > Math.max(segment.ax, segment.bx) + 1) continue;
    const left = leftOfPlace(segment, place) * (up ? 1n : -1n);
    if (left > 0n || (left === 0n && isLefter)) turns += up ? 1 : -1;
  }
  return turns;
}

function boxesApart(p: Segment, q: Segment): boolean {
  return (
    Math.max(p.ax, p.bx) < Math.min(q.ax, q.bx) ||
    Math.max(q.ax, q.bx) < Math.min(p.ax, p.bx) ||
    Math.max(p.ay, p.by) < Math.min(q.ay, q.by) ||
    Math.max(q.ay, q.by) < Math.min(p.ay, p.by)
  );
}

/** Twice the area of the triangle with the segment: positive when the point lies to its left. */
function leftOf({ ax, ay, bx, by }: Segment, x: number, y: number): bigint {
  return BigInt(bx - ax) * BigInt(y - ay) - BigInt(by - ay) * BigInt(x - ax);
}

function leftOfPlace({ ax, ay, bx, by }: Segment, { x, y, below }: Place): bigint {
  return BigInt(bx - ax) * (y - BigInt(ay) * below) - BigInt(by - ay) * (x - BigInt(ax) * below);
}

function along({ ax, ay, bx, by }: Segment, x: number, y: number): Fraction {
  const [dx, dy] = [BigInt(bx - ax), BigInt(by - ay)];
  return { above: BigInt(x - ax) * dx + BigInt(y - ay) * dy, below: dx * dx + dy * dy };
}

const positive = (above: bigint, below: bigint): Fraction =>
  below < 0n ? { above: -above, below: -below } : { above, below };

const sign = (v: bigint): bigint => (v > 0n ? 1n : v < 0n ? -1n : 0n);
