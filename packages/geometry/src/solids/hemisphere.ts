// Half ball of radius r on its flat side, mm. Half of Archimedes' ball and a disc. Full centre of mass at 3r/8, that of
// the dome alone at r/2: Weisstein, CRC Concise Encyclopedia of Mathematics, "Hemisphere".

import { cubed, num, over, PI, squared, sym, times } from '../kernel/formula.ts';
import { defineSolid } from './define.ts';
import { DOWN, UP } from './rest.ts';
import { revolved } from './revolution.ts';
import { radiusField } from './sizes.ts';
import { mm } from './types.ts';
import { DISC_BASE, PYRAMID_SURFACE, resultOf, work } from './working.ts';

const r = sym('r');

export const hemisphere = defineSolid<'radius'>({
  id: 'hemisphere',
  fields: [radiusField('radius', 'diameter', 'circumference')],
  example: { radius: 35 },
  build: ({ radius }) => {
    const sizes = { r: mm(radius) };
    const surface = work(sizes, [DISC_BASE, ['L', times(num(2), PI, squared(r)), 'mm2'], PYRAMID_SURFACE]);
    return revolved({
      volume: work(sizes, [['V', times(over(num(2), num(3)), PI, cubed(r)), 'mm3']]),
      surface,
      slantMm: null,
      body: [{ kind: 'half-ball', centre: [0, 0, 0], axis: UP, radiusMm: radius }],
      base: { radiusMm: radius, zMm: 0 },
      top: null,
      curved: { net: 'none', areaMm2: resultOf(surface, 'L'), zMm: radius / 2 },
      fullZMm: (3 * radius) / 8,
      apexes: 0,
      sides: [
        { id: 'flat', down: DOWN, contact: 'face' },
        { id: 'dome', down: UP, contact: 'point' },
      ],
    });
  },
});
