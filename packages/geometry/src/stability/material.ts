// What a piece is made of, as a kit says it, and the mass that follows. Grams, mm.

import { signedAreaMm2 } from '../kernel/polygon.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { add3, flatten, scale3 } from '../kernel/vec.ts';
import type { Solid } from '../solids/types.ts';

export type Material =
  | {
      readonly kind: 'folded-paper';
      readonly gramsPerM2: number;
      readonly base: 'closed' | 'open';
      /** True when it was cut from a printed net, whose tabs weigh too. */
      readonly printedNet: boolean;
    }
  | { readonly kind: 'full'; readonly densityGPerCm3: number };

/** What the tabs of a printed net add: paper glued flat behind the faces. Centre of its area in the solid's own frame, mm. */
export interface TabPaper {
  readonly areaMm2: number;
  readonly centre: Vec3;
}

/**
 * The tabs of a solid's printed net, with or without the tabs of its base; null where it has none. Handed in, for nets stand
 * on geometry and not under it.
 */
export type TabsOf = (solid: Solid, base: 'closed' | 'open') => TabPaper | null;

/** For those who judge pieces that were not cut from printed nets. */
export const noTabs: TabsOf = () => null;

export interface OwnMass {
  readonly massG: number;
  /** Centre of mass in the solid's own frame, mm. */
  readonly centre: Vec3;
}

/**
 * Mass and centre of mass of a piece. A shell whose solid has no base to leave open is closed whatever the kit says; one cut
 * from a printed net weighs its tabs too.
 */
export function massOf(solid: Solid, material: Material, tabsOf: TabsOf): OwnMass {
  if (material.kind === 'full') {
    return { massG: (solid.volumeMm3 / MM3_PER_CM3) * material.densityGPerCm3, centre: solid.centroids.full };
  }
  const open = material.base === 'open' ? solid.centroids.openShell : null;
  const paperMm2 = solid.surfaceMm2 - (open === null ? 0 : baseAreaMm2(solid));
  const centre = open ?? solid.centroids.closedShell;
  const tabs = material.printedNet ? tabsOf(solid, open === null ? 'closed' : 'open') : null;
  const tabsMm2 = tabs?.areaMm2 ?? 0;
  const allMm2 = paperMm2 + tabsMm2;
  return {
    massG: (allMm2 / MM2_PER_M2) * material.gramsPerM2,
    centre: tabs === null ? centre : add3(scale3(centre, paperMm2 / allMm2), scale3(tabs.centre, tabsMm2 / allMm2)),
  };
}

const MM3_PER_CM3 = 1e3;
const MM2_PER_M2 = 1e6;

/** The first flat face is the base: a solid without one has no open shell. */
function baseAreaMm2({ flatFaces: [base] }: Solid): number {
  if (base === undefined) return 0;
  return base.kind === 'disc' ? Math.PI * base.radiusMm ** 2 : Math.abs(signedAreaMm2(base.corners.map(flatten)));
}
