import { makeSolid } from '@cairnmark/geometry';
import { makeNet } from '@cairnmark/nets';
import { expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import { netSvg } from './net-svg.ts';

function svgOf(edge: number): string {
  const cube = makeSolid({ solid: 'cube', sizes: { edge } });
  const net = cube.ok ? makeNet(cube.value, { tabDepthMm: 8 }) : cube;
  if (!net.ok) throw new Error(JSON.stringify(net.issues));
  return netSvg(net.value, 'Die <7>', 'es');
}

const group = (svg: string, id: string): string => new RegExp(`<g id="${id}"[\\s\\S]*?</g>`).exec(svg)?.[0] ?? '';

it('a net for machines that cut has what is cut and what is folded apart, true to size, and no writing', () => {
  const svg = svgOf(37);
  expect(svg).toContain('<title>Die &#60;7&#62;</title>');
  expect(svg).not.toMatch(/<text|dasharray/);
  // The cube is one part; five folds hold its faces together, and seven tabs (V - 1) have one each.
  expect(group(svg, 'cut').match(/<path /g)).toHaveLength(1);
  expect(group(svg, 'cut')).toContain('class="cut"');
  expect(group(svg, 'fold').match(/<path /g)).toHaveLength(5 + 7);
  expect(group(svg, 'fold')).toContain('class="fold score"');
  // Every fold is an edge of 37 mm.
  for (const [, x0, y0, x1, y1] of group(svg, 'fold').matchAll(/d="M([\d.]+) ([\d.]+) L([\d.]+) ([\d.]+)"/g)) {
    expectNear(Math.hypot(Number(x1) - Number(x0), Number(y1) - Number(y0)), 37, { absolute: 2e-4 });
  }
  const [, width, height, boxWidth, boxHeight] =
    /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  expect([width, height]).toEqual([boxWidth, boxHeight]);
  const numbers = [...group(svg, 'cut').matchAll(/[ML]([\d.]+) ([\d.]+)/g)];
  expect(Math.max(...numbers.map(([, x]) => Number(x)))).toBeLessThan(Number(width));
  expect(Math.max(...numbers.map(([, , y]) => Number(y)))).toBeLessThan(Number(height));
  expect(numbers.length).toBeGreaterThan(20);
});
