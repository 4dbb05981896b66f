// A flat-faced solid that one edge length gives whole: every face a regular polygon of that edge, no base of its own.

import type { Expr } from '../kernel/formula.ts';
import { defineSolid } from './define.ts';
import type { Polyhedron } from './polyhedron.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField } from './sizes.ts';
import type { SolidDefinition, SolidId } from './types.ts';
import { mm } from './types.ts';
import { work } from './working.ts';

export interface EdgeRecipe {
  readonly id: SolidId;
  readonly exampleMm: number;
  /** Volume and surface over the edge, the symbol a. */
  readonly volume: Expr;
  readonly surface: Expr;
  readonly shape: (edgeMm: number) => Polyhedron;
  /** Names of the sides it can lie on, each with the index of such a face. */
  readonly sides: Readonly<Record<string, number>>;
}

export const edgeSolid = ({ id, exampleMm, volume, surface, shape, sides }: EdgeRecipe): SolidDefinition =>
  defineSolid<'edge'>({
    id,
    fields: [lengthField('edge')],
    example: { edge: exampleMm },
    build: ({ edge }) =>
      flatFaced(shape(edge), {
        volume: work({ a: mm(edge) }, [['V', volume, 'mm3']]),
        surface: work({ a: mm(edge) }, [['S', surface, 'mm2']]),
        lateralMm2: null,
        slantMm: null,
        hasBase: false,
        sides,
      }),
  });
