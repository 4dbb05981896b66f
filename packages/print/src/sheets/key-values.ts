// The true values of a solid as a class finds them: in the divisions of its ruler, with its own pi, counted its way. They
// come from the engine, and are those that a pupil's own results are held against.

import type { Challenge } from '@cairnmark/engine';
import { ownLines } from '@cairnmark/engine';
import type { Fact, Solid, SolidSpec } from '@cairnmark/geometry';
import { CATALOGUE, length3, measureBuild, rulerOf, schoolCounts, sub3 } from '@cairnmark/geometry';

export interface KeyValues {
  readonly counts: Readonly<Record<'faces' | 'curved-surfaces' | 'edges' | 'corners', number>>;
  /** mm; null where no edge is straight. */
  readonly longestEdgeMm: number | null;
  readonly heightMm: number | null;
  /** mm; none, or one, or over a rectangle two. */
  readonly slantsMm: readonly number[];
  readonly surface: KeyAmount | null;
  readonly volume: KeyAmount | null;
}

/** mm2 or mm3, with the tolerance within which a result agrees. */
export interface KeyAmount {
  readonly value: number;
  readonly tolerance: number;
}

/** `spec`: the sizes as the kit writes them. */
export function keyValues(spec: SolidSpec, solid: Solid, challenge: Challenge): KeyValues {
  const { counting } = challenge;
  return {
    counts: { ...schoolCounts(solid.counts, counting), 'curved-surfaces': solid.counts.curvedSurfaces },
    longestEdgeMm: longestEdgeMm(solid),
    heightMm: solid.restings[0]?.heightMm ?? null,
    slantsMm: slantsMm(solid),
    ...amountsOf(spec, challenge),
  };
}

function longestEdgeMm({ flatFaces }: Solid): number | null {
  const edges = flatFaces.flatMap((face) =>
    face.kind === 'disc'
      ? []
      : face.corners.map((corner, k) => length3(sub3(face.corners[(k + 1) % face.corners.length] ?? corner, corner))),
  );
  return edges.length === 0 ? null : Math.max(...edges);
}

function slantsMm(solid: Solid): readonly number[] {
  if (solid.slantMm !== null) return [solid.slantMm];
  return CATALOGUE[solid.id].ways(solid.sizes).flatMap((way) => {
    if (way.kind !== 'slope' || way.name === 'slantEdge') return [];
    return [Math.hypot(solid.sizes[way.of] ?? 0, way.runMm)];
  });
}

/** As the engine works them out for one piece, with the pi of the class. */
function amountsOf(spec: SolidSpec, challenge: Challenge): Pick<KeyValues, 'surface' | 'volume'> {
  const { counting, base, gapAllowanceMm, ruler, own } = challenge;
  const measured = measureBuild({ kind: 'numbers-only', pieces: ['it'] }, new Map([['it', spec]]), {
    counting,
    base,
    gapAllowanceMm,
    rulerStepMm: rulerOf(ruler).stepMm,
  });
  const facts: readonly Fact[] = measured.ok ? measured.value.facts : [];
  const asked = [
    { measure: 'paper', value: 0 },
    { measure: 'volume', value: 0 },
  ] as const;
  const [surface, volume] = ownLines(asked, own, { predicted: facts, reported: [] }).map(({ expected, tolerance }) =>
    expected === null ? null : { value: expected, tolerance },
  );
  return { surface: surface ?? null, volume: volume ?? null };
}
