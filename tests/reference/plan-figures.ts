// Closed forms for shadows: ellipses, the hull of two circles, and the shapes that are these drawn out one way. mm.

/** The circumference of an ellipse: the trapezium rule round the whole curve, which gains digits with every point. */
export function ellipsePerimeter(a: number, b: number): number {
  const points = 20_000;
  let sum = 0;
  for (let k = 0; k < points; k += 1) {
    const t = (2 * Math.PI * k) / points;
    sum += Math.hypot(a * Math.sin(t), b * Math.cos(t));
  }
  return (sum * 2 * Math.PI) / points;
}

/**
 * A belt round two circles, radii `R` and `r`, centres `d` apart: area inside it. Each circle keeps the arc that the
 * belt lies on; the straight parts bound two trapezia. The first circle must not lie inside the second.
 */
export function beltArea(R: number, r: number, d: number): number {
  if (d <= Math.abs(R - r)) return Math.PI * Math.max(R, r) ** 2;
  const lean = Math.acos((R - r) / d);
  return R ** 2 * (Math.PI - lean) + r ** 2 * lean + (R + r) * Math.sqrt(d ** 2 - (R - r) ** 2);
}

/**
 * A belt round two ellipses of one shape, half as wide as `R` and `r` across the line of centres and `squash` times
 * that along it, centres `d` apart along it. Drawing the plan out by 1 / squash makes the ellipses circles.
 */
export const squashedBeltArea = (R: number, r: number, d: number, squash: number): number =>
  squash * beltArea(R, r, d / squash);

/** Its length. The straight parts touch the drawn-out circles; the arcs are summed in 20 000 chords, off by 4e-9. */
export function squashedBeltPerimeter(R: number, r: number, d: number, squash: number): number {
  if (d / squash <= Math.abs(R - r)) return ellipsePerimeter(Math.max(R, r), Math.max(R, r) * squash);
  const lean = Math.acos((R - r) / (d / squash));
  const straight = Math.hypot((R - r) * Math.sin(lean), d - (R - r) * squash * Math.cos(lean));
  return 2 * straight + arcLength(R, squash, lean, 2 * Math.PI - lean) + arcLength(r, squash, -lean, lean);
}

/** Of the ellipse (squash radius cos t, radius sin t), for t between the two angles. */
function arcLength(radius: number, squash: number, fromRad: number, toRad: number): number {
  const chords = 20_000;
  const at = (k: number): readonly [number, number] => {
    const t = fromRad + ((toRad - fromRad) * k) / chords;
    return [squash * radius * Math.cos(t), radius * Math.sin(t)];
  };
  let length = 0;
  for (let k = 0; k < chords; k += 1) length += Math.hypot(at(k + 1)[0] - at(k)[0], at(k + 1)[1] - at(k)[1]);
  return length;
}
