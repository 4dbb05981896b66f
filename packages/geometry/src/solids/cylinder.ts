// Cylinder of radius r and height h, mm. Formulas: OpenStax Prealgebra 2e, section 9.6; P is the circumference.

import { num, PI, sym, times } from '../kernel/formula.ts';
import { defineSolid } from './define.ts';
import { ON_BASE } from './rest.ts';
import { levelDisc, revolved } from './revolution.ts';
import { lengthField, radiusField } from './sizes.ts';
import { mm } from './types.ts';
import { DISC_BASE, PRISM_LATERAL, PRISM_SURFACE, PRISM_VOLUME, resultOf, work } from './working.ts';

export const cylinder = defineSolid<'radius' | 'height'>({
  id: 'cylinder',
  fields: [radiusField('radius', 'diameter', 'circumference'), lengthField('height')],
  example: { radius: 30, height: 70 },
  build: ({ radius, height }) => {
    const sizes = { r: mm(radius), h: mm(height) };
    const surface = work(sizes, [DISC_BASE, ['P', times(num(2), PI, sym('r')), 'mm'], PRISM_LATERAL, PRISM_SURFACE]);
    const [base, top] = [
      { radiusMm: radius, zMm: 0 },
      { radiusMm: radius, zMm: height },
    ];
    return revolved({
      volume: work(sizes, [DISC_BASE, PRISM_VOLUME]),
      surface,
      slantMm: null,
      body: [levelDisc(base), levelDisc(top)],
      base,
      top,
      curved: { net: 'rectangle', areaMm2: resultOf(surface, 'L'), zMm: height / 2 },
      fullZMm: height / 2,
      apexes: 0,
      sides: [ON_BASE, { id: 'side', down: [0, -1, 0], contact: 'line' }],
    });
  },
});
