// Builds that are new in every run: a prism on its side, frustums, a fort round a courtyard on four pages that were taped askew.

import type { LaidPiece, PlacedPiece, Resting, Solid, SolidSpec } from '@cairnmark/geometry';
import { makeSolid, placePiece } from '@cairnmark/geometry';
import type { PagePlace, TappedPiece } from '@cairnmark/photo';
import { figureOf, pagesOf, placed } from '@cairnmark/photo';
import type { Dice } from '../dice.ts';
import type { Point2, Point3, TrueCamera } from './camera-of-truth.ts';
import { project } from './camera-of-truth.ts';
import type { Scene } from './scene.ts';
import { COLOURS } from './scene.ts';

export interface Built {
  readonly laid: LaidPiece;
  readonly placed: PlacedPiece;
}

export interface FreshScene {
  readonly scene: Scene;
  readonly built: readonly Built[];
  readonly heightMm: number;
  readonly pages: 1 | 4;
}

export const FRESH: Readonly<Record<string, (dice: Dice) => FreshScene>> = {
  'a prism on its side': prismOnItsSide,
  frustums,
  'a fort round a courtyard, on four pages': fort,
};

function prismOnItsSide(dice: Dice): FreshScene {
  const box = { length: dice.between(62, 72), width: dice.between(58, 66), height: dice.between(30, 60) };
  const side = dice.between(36, 44);
  const at = { x: dice.between(-50, 20), y: dice.between(-8, 8), turn: dice.between(0, 6) };
  return onOnePage(dice, [
    stand({ solid: 'rectangular-prism', sizes: box }, 'base', at, 0),
    stand(
      { solid: 'triangular-prism', sizes: { a: side, b: side, c: side + 9, height: dice.between(42, 54) } },
      'side-c',
      { ...at, turn: at.turn + dice.between(-0.2, 0.2) },
      box.height,
    ),
  ]);
}

/** One on its large face with a cube on its small one, and one upside down beside it. */
function frustums(dice: Dice): FreshScene {
  const [edge, topEdge, height] = [dice.between(32, 38), dice.between(22, 26), dice.between(30, 50)];
  const at = { x: dice.between(-55, -35), y: dice.between(-8, 8), turn: dice.between(0, 6) };
  const frustum: SolidSpec = { solid: 'regular-frustum', sizes: { sides: dice.whole(4, 6), edge, topEdge, height } };
  const cube: SolidSpec = { solid: 'cube', sizes: { edge: dice.between(14, 18) } };
  return onOnePage(dice, [
    stand(frustum, 'base', at, 0),
    stand(frustum, 'top', { ...at, x: at.x + dice.between(88, 100), turn: dice.between(0, 6) }, 0),
    stand(cube, 'base', { ...at, turn: dice.between(0, 6) }, height),
  ]);
}

function fort(dice: Dice): FreshScene {
  const [x, y, turn] = [dice.between(-30, 30), dice.between(-30, 30), dice.between(0, 1.5)];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const ring = [-1, 0, 1].flatMap((i) => [-1, 0, 1].map((j) => [50.02 * i, 50.02 * j] as const));
  const built = ring
    .filter(([i, j]) => i !== 0 || j !== 0)
    .map(([i, j]) =>
      stand({ solid: 'cube', sizes: { edge: 50 } }, 'base', { x: x + c * i - s * j, y: y + s * i + c * j, turn }, 0),
    );
  const pages = pagesOf('a4', 4).map(
    (place): PagePlace => ({
      ...place,
      middleMm: [place.middleMm[0] + dice.between(-4, 4), place.middleMm[1] + dice.between(-4, 4)],
      turnRad: dice.between(-0.015, 0.015),
    }),
  );
  return { scene: sceneOf(built, pages), built, heightMm: 50, pages: 4 };
}

/** On a sheet without markers; with a page's number that none has. */
export function boxOnPlainSheet(dice: Dice): FreshScene {
  const sizes = { length: dice.between(62, 72), width: dice.between(42, 52), height: dice.between(40, 60) };
  const at = { x: dice.between(-40, 20), y: dice.between(-20, 20), turn: dice.between(0, 6) };
  const built = [stand({ solid: 'rectangular-prism', sizes }, 'base', at, 0)];
  const scene = sceneOf(built, [{ page: 4, middleMm: [0, 0], turnRad: 0 }]);
  return { scene, built, heightMm: sizes.height, pages: 1 };
}

function onOnePage(_: Dice, built: readonly Built[]): FreshScene {
  const heightMm = Math.max(...built.map((one) => one.placed.topMm));
  return { scene: sceneOf(built, pagesOf('a4', 1)), built, heightMm, pages: 1 };
}

const sceneOf = (built: readonly Built[], pages: readonly PagePlace[]): Scene => ({
  paper: 'a4',
  pages,
  printScale: 1,
  pieces: built.map((one, k) => ({ placed: one.placed, colour: COLOURS[k % COLOURS.length]! })),
  table: [0.2, 0.13, 0.07],
});

function stand(
  spec: SolidSpec,
  resting: string,
  { x, y, turn }: { readonly x: number; readonly y: number; readonly turn: number },
  bottomMm: number,
): Built {
  const { solid, resting: way } = lying(spec, resting);
  const laid = { kind: spec.solid, resting, xMm: x, yMm: y, turnRad: turn };
  return { laid, placed: placePiece({ laid, solid, resting: way }, 0, bottomMm) };
}

function lying(spec: SolidSpec, resting: string): { readonly solid: Solid; readonly resting: Resting } {
  const made = makeSolid(spec);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return { solid: made.value, resting: made.value.restings.find(({ id }) => id === resting)! };
}

/** Two corners far apart on every piece, as a person with a loupe taps them. */
export function tapsOnBuilt(built: readonly Built[], camera: TrueCamera, off: () => number): readonly TappedPiece[] {
  return built.map(({ laid, placed: piece }) => {
    const figure = figureOf(piece.solid, piece.resting)!;
    const corners = figure.kind === 'corners' ? figure.corners.map((one) => placed(laid, piece.bottomMm, one)) : [];
    const half = Math.floor(corners.length / 2);
    const pixels = [corners[0]!, corners[half]!].map((corner): Point2 => {
      const [u, v] = project(camera, corner);
      return [u + off(), v + off()];
    });
    return { kind: laid.kind, solid: piece.solid, resting: piece.resting, taps: { pixels, sigmaPx: 2 } };
  });
}

/** The ends of the top of the highest piece, as the photo of the side shows them. */
export function topTaps(built: readonly Built[], camera: TrueCamera, off: () => number): readonly Point2[] {
  const highest = built.reduce((a, b) => (b.placed.topMm > a.placed.topMm ? b : a)).placed;
  const corners: readonly Point3[] = highest.flatFaces.flatMap((face) => (face.kind === 'polygon' ? face.corners : []));
  const shown = corners.filter(([, , z]) => z > highest.topMm - 1e-6).map((corner) => project(camera, corner));
  const ends = [shown.reduce((a, b) => (b[0] < a[0] ? b : a)), shown.reduce((a, b) => (b[0] > a[0] ? b : a))];
  return ends.map(([u, v]) => [u + off(), v + off()]);
}
