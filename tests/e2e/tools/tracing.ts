// Tracing in the app: a tower of the corpus as a class, its photos, and where its true file says that people would tap.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoText } from '@cairnmark/demo';
import type { Page } from 'playwright-core';
import type { Point2, TrueCamera } from '../../reference/photos/camera-of-truth.ts';
import { project } from '../../reference/photos/camera-of-truth.ts';
import type { TruePiece } from '../../reference/photos/truth.ts';
import { ROOT } from '../../tools/files.ts';
import { through } from './building.ts';
import { openClass } from './classes.ts';
import { englishTrace } from './words.ts';

type Point = Point2;

interface Truth {
  readonly heightMm: number;
  readonly pieces: readonly TruePiece[];
  readonly shots: { readonly top: { readonly camera: TrueCamera } };
}

const NAME = '20261-05';
const FOLDER = join(ROOT, 'tests/corpus/photos');

export const TRUTH: Truth = JSON.parse(readFileSync(join(FOLDER, `${NAME}.json`), 'utf8'));
export const photo = (view: 'top' | 'side'): string => join(FOLDER, `${NAME}-${view}.jpg`);

/** The sizes of the tower's pieces, as a kit says them. */
const SOLIDS: Readonly<Record<string, (dims: TruePiece['dims']) => object>> = {
  'rectangular prism': (sizes) => ({ solid: 'rectangular-prism', sizes }),
  cylinder: (sizes) => ({ solid: 'cylinder', sizes }),
  'square pyramid': ({ edge = 0, height = 0 }) => ({ solid: 'regular-pyramid', sizes: { sides: 4, edge, height } }),
  'hexagonal prism': ({ side = 0, height = 0 }) => ({
    solid: 'regular-prism',
    sizes: { sides: 6, edge: side, height },
  }),
};

export const kindId = (piece: number): string => `piece-${piece}`;

/** A kind of piece of the traced build, as a kit says it. */
export interface TracedKind {
  readonly id: string;
  readonly name: string;
  readonly solid: unknown;
  readonly stock: number;
}

/** The demo class with another kit, and nothing built yet. Only the photo of the side counts for its height. */
function bareClass(traced: readonly TracedKind[]): string {
  const file = JSON.parse(demoText);
  const [challenge] = file.challenges;
  const [sample] = challenge.kit.kinds;
  const { crushed: _, ...rest } = sample;
  const bare = {
    ...challenge,
    kit: { ...challenge.kit, kinds: traced.map((kind) => ({ ...rest, ...kind })), frictions: [] },
    requirements: [],
    heightCounts: ['photo', 'model'],
  };
  const groups = file.groups.map((group: object) => ({ ...group, measured: {} }));
  return JSON.stringify({
    ...file,
    groups,
    challenges: [bare],
    attempts: [],
    supplies: {},
    day: { ...file.day, weights: {} },
  });
}

/** From Start: a class with these pieces, at the door "Trace it". */
export async function openTraceOf(page: Page, kinds: readonly TracedKind[]): Promise<void> {
  await openClass(page, bareClass(kinds));
  await through(page, 'trace');
}

/** From Start: the tower's class, at the door "Trace it". */
export async function openTrace(page: Page): Promise<void> {
  const kinds = TRUTH.pieces.map(({ kind, dims }, k) => {
    return { id: kindId(k), name: `${kind} ${k + 1}`, solid: SOLIDS[kind]?.(dims), stock: 1 };
  });
  await openTraceOf(page, kinds);
  // The tower stands on a sheet of Letter paper.
  await page.getByRole('button', { name: englishTrace('trace.paper-letter'), exact: true }).click();
}

/** Hands the door a photo or another file, whatever comes of it. */
export async function choose(
  page: Page,
  file: Parameters<ReturnType<Page['locator']>['setInputFiles']>[0],
): Promise<void> {
  await page.locator('.trace-choose input').setInputFiles(file);
  await page.locator('.trace-steps [aria-busy="true"]').waitFor({ state: 'detached' });
}

/** px of the photo from above where a piece is tapped: two corners far from each other, or three places round its rim. */
export function tapsOf({ outlineInTop, circle }: TruePiece): readonly Point[] {
  if (outlineInTop !== undefined) {
    const [first = [0, 0], ...others] = outlineInTop;
    const far = ([x, y]: Point): number => Math.hypot(x - first[0], y - first[1]);
    return [first, others.reduce((a, b) => (far(b) > far(a) ? b : a))];
  }
  if (circle === undefined) throw new RangeError('neither corners nor a rim');
  const { x, y, r, z } = circle;
  return [0, 1, 2].map((k) => {
    const turn = 2.5 + (2 * Math.PI * k) / 3;
    return project(TRUTH.shots.top.camera, [x + r * Math.cos(turn), y + r * Math.sin(turn), z]);
  });
}

/** Where a pixel of the photo is on the page. */
export function onPage(page: Page, [u, v]: Point): Promise<Point> {
  return page.locator('.trace-photo > svg').evaluate(
    (svg, [x, y]): [number, number] => {
      const matrix = svg instanceof SVGGraphicsElement ? svg.getScreenCTM() : null;
      const at = new DOMPoint(x, y).matrixTransform(matrix ?? new DOMMatrix());
      return [at.x, at.y];
    },
    [u, v] as const,
  );
}

/** A click of the mouse on a pixel of the photo. */
export async function clickOn(page: Page, pixel: Point): Promise<void> {
  await page.mouse.click(...(await onPage(page, pixel)));
}

/** px of a step of the arrow keys, with Shift 1. */
const STEP_PX = 12;

/** Arrow keys and Enter on the photo, from where the cross is (the middle at first). */
export async function keyTo(page: Page, from: Point, to: Point): Promise<Point> {
  const pressed = async (by: number, less: string, more: string): Promise<void> => {
    const [large, small] = [Math.floor(Math.abs(by) / STEP_PX), Math.round(Math.abs(by) % STEP_PX)];
    const key = by < 0 ? less : more;
    for (let k = 0; k < large; k += 1) await page.keyboard.press(key);
    for (let k = 0; k < small; k += 1) await page.keyboard.press(`Shift+${key}`);
  };
  const [dx, dy] = [Math.round(to[0] - from[0]), Math.round(to[1] - from[1])];
  await pressed(dx, 'ArrowLeft', 'ArrowRight');
  await pressed(dy, 'ArrowUp', 'ArrowDown');
  await page.keyboard.press('Enter');
  return [from[0] + dx, from[1] + dy];
}

/** The photo from above with the first pieces of the tower, usually all, traced by the mouse; ends at the photo of the side. */
export async function traceAbove(page: Page, count = TRUTH.pieces.length): Promise<void> {
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
  await choose(page, photo('top'));
  for (const [k, piece] of TRUTH.pieces.slice(0, count).entries()) {
    await page.locator(`[data-trace-kind="${kindId(k)}"]`).click();
    for (const tap of tapsOf(piece)) await clickOn(page, tap);
    await press(englishTrace('trace.it-fits'));
  }
  await press(englishTrace('trace.to-side'));
}
