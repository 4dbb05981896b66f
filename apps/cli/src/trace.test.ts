// The command that traces, on a tower of the corpus whose true places and height are known.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tapsOn } from '../../../tests/reference/photos/true-taps.ts';
import { readTower } from '../../../tests/reference/photos/truth.ts';
import { ROOT } from '../../../tests/tools/files.ts';
import { tried } from './tried.ts';

const TOWER = readTower('20261-05');
const [TOP, SIDE] = ['top', 'side'].map((view) => join(ROOT, `tests/corpus/photos/${TOWER.name}-${view}.jpg`));

function tapsFile(change: object = {}): string {
  const { pieces, top } = tapsOn(TOWER, { seed: 7, sigmaPx: 1 });
  const listed = pieces.map(({ kind, solid, resting, taps }) => ({
    kind,
    solid: { solid: solid.id, sizes: solid.sizes },
    resting: resting.id,
    taps: taps.pixels,
  }));
  return JSON.stringify({ sheet: 'ground', paper: TOWER.paper, pieces: listed, top: top?.pixels, ...change });
}

const traced = (taps: string, ...more: readonly string[]) =>
  tried(['trace', TOP ?? '', SIDE ?? '', '--taps', 'taps.json', ...more], { 'taps.json': taps });

describe('trace', () => {
  it('tells where the pieces stand and how high the build is, for people and as data', async () => {
    const { code, out } = await traced(tapsFile());
    expect(code).toBe(0);
    expect(out).toMatch(/^Squares found: \d of 8\. Tilt 3[12]°\.\n/);
    expect(out).toMatch(/\npiece-0 +0\.0 mm +-?−?\d+\.\d mm/);
    expect(out).toContain('The pieces add up to 144.4 mm.');
    expect(out).toMatch(/By the photo of the side it is 14[3-6]\.\d mm high, ± \d\.\d mm\./);
    const { layout, height } = JSON.parse((await traced(tapsFile(), '--as', 'json')).out);
    for (const [k, { x, y }] of TOWER.pieces.entries()) {
      expect(Math.hypot(layout.pieces[k].xMm - x, layout.pieces[k].yMm - y)).toBeLessThan(1.5);
    }
    expect(Math.abs(height.heightMm - TOWER.heightMm)).toBeLessThan(3);
    expect((await traced(tapsFile(), '--as', 'csv')).out).toMatch(/^kind,bottom_mm,.*\npiece-0,0,/);
  });

  it('says what is wrong with a call, with a file and with taps', async () => {
    const said = async (taps: string): Promise<string> => (await traced(taps)).err;
    expect((await tried(['trace'])).code).toBe(2);
    expect((await tried(['trace', 'a.jpg'])).err).toContain('--taps');
    expect(await said('no json')).toContain('taps.json: This is no JSON.');
    expect(await said('[]')).toContain('This is missing, or not as it should be.');
    expect(await said(tapsFile({ paper: 'a5' }))).toContain('paper: This is missing');
    expect(await said(tapsFile({ pieces: [{ kind: 'box' }] }))).toContain('pieces 1, solid: This is missing');
    expect(await said(tapsFile({ top: [[3]] }))).toContain('top: This is missing');
    expect(await said(tapsFile({ top: [] }))).toContain('taps');
    const noPhoto = await tried(['trace', 'a.jpg', '--taps', 't.json'], { 'a.jpg': 'letter', 't.json': tapsFile() });
    expect(noPhoto).toMatchObject({ code: 1, err: 'a.jpg: This is no JPEG photo. Save it as one, then try again.\n' });
  });

  it('speaks Spanish too', async () => {
    expect((await traced(tapsFile(), '--lang', 'es')).out).toContain('Las piezas suman 144,4 mm.');
    expect((await tried(['help', 'trace', '--lang', 'es'])).out).toContain('cairnmark trace TOP.jpg');
  });
});

it('the photos of the corpus are there to be read', () => {
  for (const file of [TOP, SIDE]) expect(readFileSync(file ?? '').length).toBeGreaterThan(100_000);
});
