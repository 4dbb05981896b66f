// Cone of radius r and height h, mm, with its apex above the middle of the base; s is the slant height. A third of the
// cylinder: Euclid, Elements XII.10. Full centre of mass at h/4, that of the curved surface at h/3.

import { PI, sym, times } from '../kernel/formula.ts';
import { defineSolid } from './define.ts';
import { ON_BASE } from './rest.ts';
import { levelDisc, revolved } from './revolution.ts';
import { radiusField } from './sizes.ts';
import { mm } from './types.ts';
import { DISC_BASE, PYRAMID_SURFACE, PYRAMID_VOLUME, resultOf, slantOver, work } from './working.ts';

const [r, s] = [sym('r'), sym('s')] as const;

export const cone = defineSolid<'radius' | 'height'>({
  id: 'cone',
  fields: [
    radiusField('radius', 'diameter', 'circumference'),
    { name: 'height', unit: 'mm', ways: { slant: { run: ({ radius }) => radius } } },
  ],
  example: { radius: 30, height: 70 },
  build: ({ radius, height }) => {
    const sizes = { r: mm(radius), h: mm(height) };
    const surface = work(sizes, [DISC_BASE, slantOver('s', r), ['L', times(PI, r, s), 'mm2'], PYRAMID_SURFACE]);
    const slant = resultOf(surface, 's');
    const base = { radiusMm: radius, zMm: 0 };
    return revolved({
      volume: work(sizes, [DISC_BASE, PYRAMID_VOLUME]),
      surface,
      slantMm: slant,
      body: [levelDisc(base), { kind: 'points', points: [[0, 0, height]] }],
      base,
      top: null,
      curved: { net: 'sector', areaMm2: resultOf(surface, 'L'), zMm: height / 3 },
      fullZMm: height / 4,
      apexes: 1,
      sides: [ON_BASE, { id: 'side', down: [0, -height / slant, radius / slant], contact: 'line' }],
    });
  },
});
