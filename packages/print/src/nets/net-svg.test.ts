// Drawings of nets for machines that cut: what stands in the file, against the net. mm.

import type { SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import type { Net } from '@cairnmark/nets';
import { makeNet, pathAreaMm2, straightPath } from '@cairnmark/nets';
import { expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import { netSvg } from './net-svg.ts';

function netOf(spec: SolidSpec): Net {
  const solid = makeSolid(spec);
  const net = solid.ok ? makeNet(solid.value, { tabDepthMm: 8 }) : solid;
  if (!net.ok) throw new Error(JSON.stringify(net.issues));
  return net.value;
}

/** The ends of the steps of every path of a group, y up again. */
function pathsIn(svg: string, group: 'cut' | 'fold'): readonly (readonly (readonly [number, number])[])[] {
  const [, inside = ''] = new RegExp(`<g id="${group}"[^>]*>([\\s\\S]*?)</g>`).exec(svg) ?? [];
  return [...inside.matchAll(/ d="([^"]*)"/g)].map(([, d = '']) =>
    [...d.matchAll(/[MLC]([^MLCZ]*)/g)].map(([, numbers = '']) => {
      const values = numbers.trim().split(/ +/).map(Number);
      return [values.at(-2) ?? Number.NaN, -(values.at(-1) ?? Number.NaN)] as const;
    }),
  );
}

/** Its base is not its own mirror image: turned over, the net would fold to another prism. */
const WEDGE = netOf({ solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } });

it('a net is drawn true to size, as it is seen and not turned over, with every fold', () => {
  const svg = netSvg(WEDGE, 'Wedge', 'en');
  const [part] = WEDGE.parts;
  const [cut = []] = pathsIn(svg, 'cut');
  // Counter-clockwise, like the net itself: an area with its sign. Each of some twenty corners is written to 1e-4 mm.
  expectNear(pathAreaMm2(straightPath(cut, true)), pathAreaMm2(part!.cut), { absolute: 0.1 });
  expect(pathAreaMm2(part!.cut)).toBeGreaterThan(0);
  const lengths = (paths: ReturnType<typeof pathsIn>) =>
    paths.map(([[x, y] = [0, 0], [a, b] = [0, 0]]) => Math.hypot(a - x, b - y));
  const folds = lengths(pathsIn(svg, 'fold'));
  expect(folds).toHaveLength(part!.folds.length);
  part!.folds.forEach(({ path: { start, steps } }, k) => {
    const [end] = steps.map(({ to }) => to);
    expectNear(folds[k] ?? 0, Math.hypot(end![0] - start[0], end![1] - start[1]), { absolute: 3e-4 });
  });
});

it('its unit is the mm, the parts lie side by side inside it, and the name is no markup', () => {
  const svg = netSvg(netOf({ solid: 'cylinder', sizes: { radius: 20, height: 50 } }), 'Drum <1>', 'es');
  const [, width, height, right, top] =
    /<svg[^>]* width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)" xml:lang="es"/.exec(svg) ?? [];
  expect([width, height]).toEqual([right, top]);
  const cuts = pathsIn(svg, 'cut');
  expect(cuts).toHaveLength(3);
  const spans = cuts.map(
    (points) => [Math.min(...points.map(([x]) => x)), Math.max(...points.map(([x]) => x))] as const,
  );
  // 5 mm between parts; a disc reaches its ends at corners of its path.
  for (const [k, [left]] of spans.slice(1).entries()) {
    expectNear(left - (spans[k]?.[1] ?? 0), 5, { absolute: 1e-3 });
  }
  expectNear(Number(width) - (spans.at(-1)?.[1] ?? 0), 5, { absolute: 1e-3 });
  expect(svg).toContain('<title>Drum &#60;1&#62;</title>');
});
