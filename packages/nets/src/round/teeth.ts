// Teeth along a rim: the wall of a round solid is glued to its disc by a row of small tabs. A tooth is so narrow that its
// straight fold keeps within TOOTH_SAGITTA_MM of the round rim: sqrt(8 r x sagitta). mm, rad.

import type { NetTab } from '../net.ts';
import { onCircle } from '../path/arc.ts';
import { pathAreaMm2 } from '../path/measure.ts';
import { lineTo } from '../path/path.ts';
import { centroidOf } from '../plane/centroid.ts';
import { deepestMm, tabShape } from '../tabs/tab-shape.ts';
import { STEEPEST_TOOTH_RAD, TOOTH_RADIUS_SHARE, TOOTH_ROOM_RAD, TOOTH_SAGITTA_MM } from '../tolerance.ts';
import type { Placed } from '../unfold/faces.ts';
import { inSpace } from '../unfold/faces.ts';
import type { Wall } from './wall.ts';
import { azimuthAt, levelSteps, onSheet } from './wall.ts';

export interface Rim {
  readonly level: 'lower' | 'upper';
  /** The disc's face and where it is in space, told from its centre on the sheet. */
  readonly disc: number;
  readonly placed: Placed;
}

/** The teeth of one rim in the order in which they are cut: along the lower rim to the right, along the upper one to the left. */
export function teethOf(wall: Wall, wallFace: number, rim: Rim, tabDepthMm: number): readonly NetTab[] {
  const { radiusMm } = wall[rim.level];
  const count = Math.max(
    FEWEST_TEETH,
    Math.ceil((2 * Math.PI * radiusMm) / Math.sqrt(8 * radiusMm * TOOTH_SAGITTA_MM)),
  );
  const onRim = rim.level === 'lower' ? 0 : wall.slantMm;
  const step = rim.level === 'lower' ? 1 / count : -1 / count;
  const first = rim.level === 'lower' ? 0 : 1;
  return Array.from({ length: count }, (_, k): NetTab => {
    const [u, next] = [first + k * step, first + (k + 1) * step];
    const [a, b] = [onSheet(wall, u, onRim), onSheet(wall, next, onRim)];
    // Two neighbours on the disc are turned by 360 / count degrees, and share that; on the sheet by no more.
    const bevel = Math.min(STEEPEST_TOOTH_RAD, Math.PI / 2 - Math.PI / count - TOOTH_ROOM_RAD);
    const bevels = { atA: bevel, atB: bevel };
    const widthMm = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const depthMm = Math.min(tabDepthMm, TOOTH_RADIUS_SHARE * radiusMm, deepestMm(widthMm, bevels));
    const { ring } = tabShape(a, b, bevels, depthMm);
    const landing = tabShape(onDisc(rim, radiusMm, u), onDisc(rim, radiusMm, next), bevels, depthMm).ring;
    const outline = {
      start: a,
      steps: [...ring.slice(1).map(lineTo), ...levelSteps(wall, onRim, next, u)],
      closed: true,
    };
    const centroid = inSpace(rim.placed, centroidOf(landing));
    return {
      kind: 'tooth',
      outline,
      areaMm2: pathAreaMm2(outline),
      depthMm,
      host: wallFace,
      mate: rim.disc,
      landing,
      centroid,
    };
  });
}

const FEWEST_TEETH = 6;

/** A point of the rim on the sheet of the disc. Seen from inside, the upper disc is its own mirror image from above. */
function onDisc({ level }: Rim, radiusMm: number, u: number): readonly [number, number] {
  const azimuth = azimuthAt(u);
  return onCircle([0, 0], radiusMm, level === 'lower' ? azimuth : Math.PI - azimuth);
}
