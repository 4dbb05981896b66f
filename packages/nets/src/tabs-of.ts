// What the tabs of a printed net add to a folded piece: tabs weigh, and they lie where the seams are.

import type { Result, Solid, Vec3 } from '@cairnmark/geometry';
import { add3, scale3, success } from '@cairnmark/geometry';
import { makeNet } from './make-net.ts';
import type { Net, NetIssue, NetOptions } from './net.ts';

export interface TabMass {
  /** Area of all tabs. Times the paper's mass by area it is their mass. */
  readonly areaMm2: number;
  /** Where they balance, folded and glued flat behind their mates, in the solid's own frame; mm. */
  readonly centroid: Vec3;
}

/** The tabs of the net of `solid`. Refused with `no-net` for what nobody folds. */
export function tabsOf(solid: Solid, options: NetOptions): Result<TabMass, NetIssue> {
  const net = makeNet(solid, options);
  return net.ok ? success(tabMassOf(net.value)) : net;
}

/** The tabs of a net, split or not. */
export function tabMassOf({ parts, tabsMm2 }: Net): TabMass {
  const tabs = parts.flatMap((part) => part.tabs);
  const moment = tabs.map(({ centroid, areaMm2 }) => scale3(centroid, areaMm2)).reduce(add3, [0, 0, 0]);
  return { areaMm2: tabsMm2, centroid: scale3(moment, 1 / tabsMm2) };
}
