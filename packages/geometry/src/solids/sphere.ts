// Ball of radius r, mm. Formulas: OpenStax Prealgebra 2e, section 9.6; Archimedes.

import { cubed, num, over, PI, squared, sym, times } from '../kernel/formula.ts';
import { defineSolid } from './define.ts';
import { DOWN } from './rest.ts';
import { revolved } from './revolution.ts';
import { radiusField } from './sizes.ts';
import { mm } from './types.ts';
import { resultOf, work } from './working.ts';

const r = sym('r');

export const sphere = defineSolid<'radius'>({
  id: 'sphere',
  fields: [radiusField('radius', 'diameter', 'circumference')],
  example: { radius: 35 },
  build: ({ radius }) => {
    const sizes = { r: mm(radius) };
    const surface = work(sizes, [['S', times(num(4), PI, squared(r)), 'mm2']]);
    return revolved({
      volume: work(sizes, [['V', times(over(num(4), num(3)), PI, cubed(r)), 'mm3']]),
      surface,
      slantMm: null,
      body: [{ kind: 'ball', centre: [0, 0, radius], radiusMm: radius }],
      base: null,
      top: null,
      curved: { net: 'none', areaMm2: resultOf(surface, 'S'), zMm: radius },
      fullZMm: radius,
      apexes: 0,
      sides: [{ id: 'round', down: DOWN, contact: 'point' }],
    });
  },
});
