// What the class has left to hand out.

import { apply, changeOfStock, strokes } from './strokes.ts';
import type { SupplyEvent } from './types.ts';

/** Pieces by kind id: the stock, less what all groups earned, and what they returned. */
export function stockLeft(
  events: readonly SupplyEvent[],
  stock: Readonly<Record<string, number>>,
): Record<string, number> {
  const left = new Map(Object.entries(stock));
  for (const event of strokes(events)) apply(changeOfStock(event), left);
  return Object.fromEntries(left);
}
