// Friction of two surfaces on each other. What is stated for the pair counts, else the smaller of the two coefficients:
// the slippery one of the two decides. The table is a surface like any other.

/** A surface as a kit names it, with the coefficient of friction it has against others; no unit. */
export interface Surface {
  readonly material: string;
  readonly friction: number;
}

/** The coefficient measured for two named materials on each other, in either order. */
export interface PairFriction {
  readonly between: readonly [string, string];
  readonly friction: number;
}

export function frictionBetween(first: Surface, second: Surface, pairs: readonly PairFriction[]): number {
  const stated = pairs.find(
    ({ between: [a, b] }) =>
      (a === first.material && b === second.material) || (a === second.material && b === first.material),
  );
  return stated?.friction ?? Math.min(first.friction, second.friction);
}
