// Cone frustum: a cone cut level, radius R below, r above, height h, mm. Volume: Moscow papyrus, problem 14, with discs.
// Centres of mass: Standard Mathematical Tables (from memory), held against an independent table in the tests.

import { minus, num, over, PI, squared, sum, sym, times } from '../kernel/formula.ts';
import { defineSolid } from './define.ts';
import { ON_BASE, ON_TOP } from './rest.ts';
import { levelDisc, revolved } from './revolution.ts';
import { notUpsideDown, radiusField } from './sizes.ts';
import { mm } from './types.ts';
import type { Line } from './working.ts';
import { FRUSTUM_SURFACE, resultOf, slantOver, work } from './working.ts';

const [R, r, h, s] = [sym('R'), sym('r'), sym('h'), sym('s')] as const;
const VOLUME: Line = ['V', times(over(num(1), num(3)), PI, h, sum(squared(R), times(R, r), squared(r))), 'mm3'];

export const coneFrustum = defineSolid<'radius' | 'topRadius' | 'height'>({
  id: 'cone-frustum',
  fields: [
    radiusField('radius', 'diameter', 'circumference'),
    radiusField('topRadius', 'topDiameter', 'topCircumference'),
    { name: 'height', unit: 'mm', ways: { slant: { run: ({ radius, topRadius }) => radius - topRadius } } },
  ],
  example: { radius: 50, topRadius: 30, height: 70 },
  rules: ({ radius, topRadius }) => notUpsideDown('topRadius', topRadius, radius),
  build: ({ radius, topRadius, height }) => {
    const sizes = { R: mm(radius), r: mm(topRadius), h: mm(height) };
    const surface = work(sizes, [
      ['B1', times(PI, squared(R)), 'mm2'],
      ['B2', times(PI, squared(r)), 'mm2'],
      slantOver('s', minus(R, r)),
      ['L', times(PI, sum(R, r), s), 'mm2'],
      FRUSTUM_SURFACE,
    ]);
    const slant = resultOf(surface, 's');
    const [base, top] = [
      { radiusMm: radius, zMm: 0 },
      { radiusMm: topRadius, zMm: height },
    ];
    const [whole, mixed, cut] = [radius ** 2, radius * topRadius, topRadius ** 2];
    return revolved({
      volume: work(sizes, [VOLUME]),
      surface,
      slantMm: slant,
      body: [levelDisc(base), levelDisc(top)],
      base,
      top,
      curved: {
        net: 'ring-sector',
        areaMm2: resultOf(surface, 'L'),
        zMm: (height / 3) * ((radius + 2 * topRadius) / (radius + topRadius)),
      },
      fullZMm: (height / 4) * ((whole + 2 * mixed + 3 * cut) / (whole + mixed + cut)),
      apexes: 0,
      sides: [
        ON_BASE,
        ON_TOP,
        { id: 'side', down: [0, -height / slant, (radius - topRadius) / slant], contact: 'line' },
      ],
    });
  },
});
