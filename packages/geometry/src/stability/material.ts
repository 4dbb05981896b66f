// What a piece is made of, as a kit says it, and the mass that follows. Grams, mm.

import { signedAreaMm2 } from '../kernel/polygon.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { flatten } from '../kernel/vec.ts';
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

export interface OwnMass {
  readonly massG: number;
  /** Centre of mass in the solid's own frame, mm. */
  readonly centre: Vec3;
}

/** Mass and centre of mass of a piece. A shell whose solid has no base to leave open is closed whatever the kit says. */
export function massOf(solid: Solid, material: Material): OwnMass {
  if (material.kind === 'full') {
    return { massG: (solid.volumeMm3 / MM3_PER_CM3) * material.densityGPerCm3, centre: solid.centroids.full };
  }
  const open = material.base === 'open' ? solid.centroids.openShell : null;
  const paperMm2 = solid.surfaceMm2 - (open === null ? 0 : baseAreaMm2(solid));
  return { massG: (paperMm2 / MM2_PER_M2) * material.gramsPerM2, centre: open ?? solid.centroids.closedShell };
}

const MM3_PER_CM3 = 1e3;
const MM2_PER_M2 = 1e6;

/** The first flat face is the base: a solid without one has no open shell. */
function baseAreaMm2({ flatFaces: [base] }: Solid): number {
  if (base === undefined) return 0;
  return base.kind === 'disc' ? Math.PI * base.radiusMm ** 2 : Math.abs(signedAreaMm2(base.corners.map(flatten)));
}
