// The parts of a round solid: its wall with a row of teeth along each rim and a tab at its seam, and its discs, each loose.

import type { FlatFace, Solid } from '@cairnmark/geometry';
import type { NetFace, NetFold, NetPart, NetTab } from '../net.ts';
import { circlePath } from '../path/arc.ts';
import type { Path, PathStep } from '../path/path.ts';
import { lineTo, straightPath } from '../path/path.ts';
import type { Placed } from '../unfold/faces.ts';
import { faceTable } from '../unfold/faces.ts';
import { seamTab } from './seam.ts';
import { teethOf } from './teeth.ts';
import type { Wall } from './wall.ts';
import { levelSteps, onSheet, wallAreaMm2, wallCentroid, wallOf, wallRoom } from './wall.ts';

/** The wall first, then the lower disc unless the base is open, and the upper one where there is one. */
export function roundParts(solid: Solid, tabDepthMm: number, base: 'closed' | 'open'): readonly NetPart[] {
  const wall = wallOf(solid);
  const wallFace = solid.flatFaces.length;
  const places = faceTable(solid).faces.map(({ placed }) => placed);
  const rows = places.map((placed, disc) => {
    if (disc === 0 && base === 'open') return [];
    const level = disc === 0 ? 'lower' : 'upper';
    return teethOf(wall, wallFace, { level, disc, placed }, tabDepthMm);
  });
  const seam = seamTab(wall, wallFace, tabDepthMm);
  const face = wallPart(wall, wallFace);
  const [lower = [], upper = []] = rows;
  const discs = solid.flatFaces.map((disc, k) => discPart(disc, k, places[k] ?? null));
  const main: NetPart = {
    cut: cutLine(wall, lower, seam, upper),
    folds: foldsOf(wall, wallFace, { lower: lower.length > 0, upper: upper.length > 0 }),
    faces: [face],
    tabs: [...lower, seam, ...upper],
    label: face.room,
  };
  return [main, ...discs.slice(base === 'open' ? 1 : 0)];
}

function wallPart(wall: Wall, face: number): NetFace {
  const [lowerLeft, upperRight] = [onSheet(wall, 0, 0), onSheet(wall, 1, wall.slantMm)];
  const steps = [...levelSteps(wall, 0, 0, 1), lineTo(upperRight), ...levelSteps(wall, wall.slantMm, 1, 0)];
  return {
    face,
    kind: wall.kind,
    outline: { start: lowerLeft, steps, closed: true },
    areaMm2: wallAreaMm2(wall),
    centroid: wallCentroid(wall),
    room: wallRoom(wall),
    placed: null,
  };
}

/** Tooth by tooth along the lower rim, up the seam, back along the upper rim. */
function cutLine(wall: Wall, lower: readonly NetTab[], seam: NetTab, upper: readonly NetTab[]): Path {
  const along = ({ outline }: NetTab): readonly PathStep[] => outline.steps.slice(0, 3);
  const below = lower.length > 0 ? lower.flatMap(along) : levelSteps(wall, 0, 0, 1);
  const steps = [...below, ...along(seam), ...upper.flatMap(along)];
  return { start: onSheet(wall, 0, 0), steps, closed: true };
}

function foldsOf(wall: Wall, face: number, teeth: Record<'lower' | 'upper', boolean>): readonly NetFold[] {
  const [right, top] = [onSheet(wall, 1, 0), onSheet(wall, 1, wall.slantMm)];
  const rim = (v: number, fromU: number, toU: number): NetFold => ({
    kind: 'tab',
    path: { start: onSheet(wall, fromU, v), steps: levelSteps(wall, v, fromU, toU), closed: false },
    face,
  });
  const seam: NetFold = { kind: 'tab', path: straightPath([right, top], false), face };
  return [...(teeth.lower ? [rim(0, 0, 1)] : []), seam, ...(teeth.upper ? [rim(wall.slantMm, 1, 0)] : [])];
}

function discPart(disc: FlatFace, face: number, placed: Placed | null): NetPart {
  if (disc.kind !== 'disc') throw new RangeError('a round solid ends in discs');
  const outline = circlePath([0, 0], disc.radiusMm);
  const room = { centre: [0, 0] as const, radiusMm: disc.radiusMm };
  const areaMm2 = Math.PI * disc.radiusMm ** 2;
  const only: NetFace = { face, kind: 'disc', outline, areaMm2, centroid: [0, 0], room, placed };
  return { cut: outline, folds: [], faces: [only], tabs: [], label: room };
}
