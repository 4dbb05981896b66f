// Second method for the drop of curved bodies: the height is the least, over all slopes (p, q), of the support function
// of the Minkowski difference along (p, q, 1) (linear-programming duality). Found by one golden-section search inside
// another on support functions in closed form, which are written here once more and not shared with the code under test.

type Point = readonly [number, number, number];

/** What the hull of a body is made of; the same words as the bodies of the engine. */
export type Part =
  | { readonly kind: 'points'; readonly points: readonly Point[] }
  | { readonly kind: 'disc'; readonly centre: Point; readonly axis: Point; readonly radiusMm: number }
  | { readonly kind: 'ball'; readonly centre: Point; readonly radiusMm: number }
  | { readonly kind: 'half-ball'; readonly centre: Point; readonly axis: Point; readonly radiusMm: number };

/**
 * The drop height of two bodies whose shadows overlap so far that the contact is no steeper than `steepest`.
 * Near a smooth least value the search sees it to rounding, 1e-15 of the size; at a kink to about 1e-13 of it.
 */
export function dualSearchDrop(upper: readonly Part[], lower: readonly Part[], steepest: number): number {
  const bound = (p: number, q: number): number => reach(lower, [p, q, 1]) + reach(upper, [-p, -q, -1]);
  return leastValue((p) => leastValue((q) => bound(p, q), steepest), steepest);
}

/** The least value of a convex function of one slope between -limit and limit. */
function leastValue(of: (slope: number) => number, limit: number): number {
  let [low, high] = [-limit, limit];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [of(left), of(right)];
  let least = Math.min(atLeft, atRight);
  while (high - low > NARROW * (1 + Math.abs(low))) {
    if (atLeft <= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = of(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = of(right);
    }
    least = Math.min(least, atLeft, atRight);
  }
  return least;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
const NARROW = 1e-14;

/** How far the hull of the parts reaches along `n`, times the length of `n`. */
const reach = (parts: readonly Part[], n: Point): number => Math.max(...parts.map((part) => partReach(part, n)));

function partReach(part: Part, n: Point): number {
  if (part.kind === 'points') return Math.max(...part.points.map((p) => dot(p, n)));
  const round = part.radiusMm * Math.hypot(...n);
  if (part.kind === 'ball') return dot(part.centre, n) + round;
  if (part.kind === 'half-ball' && dot(part.axis, n) > 0) return dot(part.centre, n) + round;
  const along = dot(part.axis, n);
  const across: Point = [n[0] - along * part.axis[0], n[1] - along * part.axis[1], n[2] - along * part.axis[2]];
  return dot(part.centre, n) + part.radiusMm * Math.hypot(...across);
}

const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
