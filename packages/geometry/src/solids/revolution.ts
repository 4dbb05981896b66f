// A round solid: one curved surface about the upright axis, with a flat disc below, above, or neither. Own frame, mm.

import type { Step } from '../kernel/formula.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { Body, Primitive } from './body.ts';
import type { Built } from './define.ts';
import type { Side } from './rest.ts';
import { DOWN, UP } from './rest.ts';
import type { CurvedSurface, FlatFace } from './types.ts';

export interface Disc {
  readonly radiusMm: number;
  readonly zMm: number;
}

export interface Revolution {
  readonly volume: readonly Step[];
  readonly surface: readonly Step[];
  readonly slantMm: number | null;
  /** Its primitives from the bottom up, all about the axis. */
  readonly body: Body;
  /** The flat disc on which it stands. */
  readonly base: Disc | null;
  readonly top: Disc | null;
  /** The curved surface; `zMm` is the height of its centre as a uniform sheet. */
  readonly curved: CurvedSurface & { readonly zMm: number };
  /** Height of the centre of mass of the full solid. */
  readonly fullZMm: number;
  readonly apexes: 0 | 1;
  readonly sides: readonly Side[];
}

/** All that follows from the parts of a round solid. Its lateral area is that of its curved surface. */
export function revolved(round: Revolution): Built {
  const { base, top, curved } = round;
  const below = base === null ? [] : [base];
  const above = top === null ? [] : [top];
  const flatFaces = [...below.map((disc) => discFace(disc, DOWN)), ...above.map((disc) => discFace(disc, UP))];
  return {
    lateralMm2: curved.areaMm2,
    slantMm: round.slantMm,
    counts: {
      flatFaces: flatFaces.length,
      curvedSurfaces: 1,
      straightEdges: 0,
      curvedEdges: flatFaces.length,
      vertices: 0,
      apexes: round.apexes,
    },
    centroids: {
      full: [0, 0, round.fullZMm],
      closedShell: [0, 0, balanceHeight([curved, ...[...below, ...above].map(discSheet)])],
      openShell: base === null ? null : [0, 0, balanceHeight([curved, ...above.map(discSheet)])],
    },
    body: round.body,
    flatFaces,
    curvedSurfaces: [{ net: curved.net, areaMm2: curved.areaMm2 }],
    sides: round.sides,
    workings: { volume: round.volume, surface: round.surface },
  };
}

/** A disc square to the axis, as part of a body. */
export const levelDisc = ({ radiusMm, zMm }: Disc): Primitive => ({
  kind: 'disc',
  centre: [0, 0, zMm],
  axis: UP,
  radiusMm,
});

const discFace = ({ radiusMm, zMm }: Disc, normal: Vec3): FlatFace => ({
  kind: 'disc',
  normal,
  centre: [0, 0, zMm],
  radiusMm,
});

interface Sheet {
  readonly areaMm2: number;
  readonly zMm: number;
}

const discSheet = ({ radiusMm, zMm }: Disc): Sheet => ({ areaMm2: Math.PI * radiusMm ** 2, zMm });

/** The height at which uniform sheets about the axis balance. */
function balanceHeight(sheets: readonly Sheet[]): number {
  const area = sheets.reduce((total, { areaMm2 }) => total + areaMm2, 0);
  return sheets.reduce((moment, { areaMm2, zMm }) => moment + areaMm2 * zMm, 0) / area;
}
