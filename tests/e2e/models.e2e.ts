// Solids and builds leave the app as files for other programs; the browser's own parts write them.

import { demoClass } from '@cairnmark/demo';
import { expect, it } from 'vitest';
import { integrate } from '../reference/mesh-integrals.ts';
import { checkClosed } from '../reference/models/closed.ts';
import { readGlb } from '../reference/models/glb.ts';
import { readStl } from '../reference/models/stl.ts';
import { expectNear } from '../tools/within.ts';
import { onCard } from './tools/card.ts';
import { openDemo, openScreen } from './tools/classes.ts';
import { inNode } from './tools/in-node.ts';
import { kindRow, openKit } from './tools/kit.ts';
import { modelNotHere, savedModel } from './tools/models.ts';
import { openApp } from './tools/open-app.ts';
import { openShare } from './tools/sharing.ts';

const TRY = 'tall-light-puffins-0941';

it('a kind of the kit, in its sizes: not without what writes it, then as STL in mm and as glTF in m', async () => {
  const page = await openApp({ provokes: /saving|ERR_INTERNET_DISCONNECTED/ });
  await openKit(page);
  const cone = kindRow(page, 'cone');
  await cone.getByRole('button', { name: 'More about Cone' }).click();
  await page.context().setOffline(true);
  await modelNotHere(cone);
  await page.context().setOffline(false);
  const [stl, glb] = [await savedModel(page, cone, 'stl'), await savedModel(page, cone, 'glb')];
  expect([stl.name, glb.name]).toEqual(['cone.stl', 'cone.glb']);
  const { head, triangles } = readStl(stl.bytes);
  expect(head).toBe('Cairnmark, mm, cone');
  checkClosed(triangles);
  // The cone of the demo is 6 cm across and 4 cm high; a circle of n facets holds (n / 2 pi) sin(2 pi / n) of its disc.
  const facets = triangles.length / 2;
  const share = Math.sin((2 * Math.PI) / facets) / ((2 * Math.PI) / facets);
  expectNear(integrate(triangles).volume, ((Math.PI * 30 ** 2 * 40) / 3) * share, { relative: 1e-6 });
  const { parts } = readGlb(glb.bytes);
  expect(parts.map(({ name }) => name)).toEqual(['Cone']);
  expectNear(integrate(parts[0]!.triangles).volume * 1e9, integrate(triangles).volume, { relative: 1e-6 });
  // As the page draws it, and not black or white.
  const [red = 0, , blue = 1] = parts[0]!.colour;
  expect(red).toBeGreaterThan(2 * blue);
});

it('the build of a try, from the Score card: its pieces by name, and as high as Build says', async () => {
  const page = await openApp();
  await openDemo(page);
  await openScreen(page, 'score');
  await onCard(page);
  await openShare(page);
  const dialog = page.getByRole('dialog');
  const [stl, glb] = [await savedModel(page, dialog, 'stl'), await savedModel(page, dialog, 'glb')];
  expect([stl.name, glb.name]).toEqual(['puffins-tall-light-try-2.stl', 'puffins-tall-light-try-2.glb']);
  const { parts, json } = readGlb(glb.bytes);
  const { layout } = demoClass().attempts.find(({ id }) => id === TRY)!;
  expect(json.scenes[0]!.name).toBe('Puffins, Tall Light, try 2');
  expect(parts.length).toBe(layout.kind === 'laid-out' ? layout.pieces.length : Number.NaN);
  const { triangles } = readStl(stl.bytes);
  const topMm = Math.max(...triangles.flat().map(([, , z]) => z));
  const topM = Math.max(...parts.flatMap((part) => part.triangles.flat().map(([, y]) => y)));
  expectNear(topM, topMm / 1000, { relative: 1e-6 });
  // "38.0 cm": half a unit of its last digit, and what facets lie inside.
  expectNear(topMm, 10 * Number.parseFloat(inNode(TRY).height), { absolute: 0.5 + 0.05 });
});
