// The colours of the page that the scene needs as numbers, read from the custom properties in force.

import type { Family } from '../drawing/family.ts';
import { colourToken, FAMILIES } from '../drawing/family.ts';

export interface Theme {
  readonly leaf: string;
  readonly square: string;
  readonly squareBold: string;
  readonly table: string;
  readonly wood: string;
  readonly ink: string;
  readonly inkSoft: string;
  readonly bad: string;
  readonly edge: string;
  readonly families: ReadonlyMap<Family, string>;
}

export function themeOf(element: Element): Theme {
  const style = getComputedStyle(element);
  const read = (token: string): string => style.getPropertyValue(token).trim();
  return {
    leaf: read('--leaf'),
    square: read('--square'),
    squareBold: read('--square-5'),
    table: read('--table'),
    wood: read('--wood'),
    ink: read('--ink'),
    inkSoft: read('--ink-2'),
    bad: read('--bad'),
    edge: read('--p-edge'),
    families: new Map(FAMILIES.map((family) => [family, read(colourToken(family))])),
  };
}
