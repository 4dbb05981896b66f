// A net as SVG 1.1 for machines that cut: true to size, without a page, a foot or writing, the lines in a group for each tool.

import type { Vec2 } from '@cairnmark/geometry';
import type { Net, NetPart } from '@cairnmark/nets';
import { FLATTEN_MM, flattenPath, turnPath } from '@cairnmark/nets';
import type { Language } from '@cairnmark/words';
import { element, escaped, pathOf, rootOf } from '../svg/write-svg.ts';

/**
 * The parts side by side; the unit is the mm, and what is seen is the inside of the solid. The group "cut" holds the lines
 * to cut, in black; the group "fold" those to score and fold, in grey and without gaps. Both carry their names as classes,
 * and the folds "score" too.
 */
export function netSvg(net: Net, title: string, language: Language): string {
  const parts = inRow(net.parts);
  const widthMm = parts.reduce((sum, part) => sum + part.widthMm + GAP_MM, GAP_MM);
  const heightMm = Math.max(...parts.map((part) => part.heightMm)) + 2 * GAP_MM;
  const group = (id: string, classes: string, colour: string, paths: readonly string[]): string =>
    element('g', { id, class: classes, fill: 'none', stroke: colour, 'stroke-width': '0.1' }, lines(paths));
  const drawn = (paths: (part: NetPart) => readonly NetPart['cut'][]): readonly string[] =>
    parts.flatMap(({ part, shiftMm }) =>
      paths(part).map((path) => element('path', { d: pathOf(turnPath(path, 0, shiftMm), heightMm) })),
    );
  const groups = [
    group(
      'fold',
      ['fold', 'score'].join(' '),
      '#808080',
      drawn(({ folds }) => folds.map(({ path }) => path)),
    ),
    group(
      'cut',
      'cut',
      '#000000',
      drawn(({ cut }) => [cut]),
    ),
  ];
  return `${element('svg', rootOf(widthMm, heightMm, language), lines([element('title', {}, escaped(title)), ...groups]))}\n`;
}

/** mm. Between parts and round all of them. */
const GAP_MM = 5;

const lines = (elements: readonly string[]): string => ['', ...elements, ''].join('\n');

interface InRow {
  readonly part: NetPart;
  readonly shiftMm: Vec2;
  readonly widthMm: number;
  readonly heightMm: number;
}

function inRow(parts: readonly NetPart[]): readonly InRow[] {
  let leftMm = GAP_MM;
  return parts.map((part) => {
    const corners = flattenPath(part.cut, FLATTEN_MM);
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    const [left, low] = [Math.min(...xs), Math.min(...ys)];
    const [widthMm, heightMm] = [Math.max(...xs) - left, Math.max(...ys) - low];
    const shiftMm: Vec2 = [leftMm - left, GAP_MM - low];
    leftMm += widthMm + GAP_MM;
    return { part, shiftMm, widthMm, heightMm };
  });
}
