// A page as SVG 1.1, for the screen and for machines that cut: the same marks as in the PDF, in mm.

import type { Result, Vec2 } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { Path, PathStep } from '@cairnmark/nets';
import type { Language } from '@cairnmark/words';
import type { PrintIssue } from '../issue.ts';
import type { Align, Font, Grey, Mark, Page, Writing } from '../page/page.ts';
import { extentOf } from '../page/paper.ts';
import { unprintable } from '../page/unprintable.ts';
import { numberText } from '../pdf/number.ts';
import { textWidthMm } from '../text/measure.ts';

/**
 * A drawing as large as the sheet; its unit is the mm. Every line of writing is given its length, so that it takes the
 * same room in any font. Refused like a PDF: a drawing never shows what cannot be printed.
 */
export function writeSvg(page: Page, title: string, language: Language): Result<string, PrintIssue> {
  const issues = unprintable([page]);
  if (issues.length > 0) return failure(issues);
  const { widthMm, heightMm } = extentOf(page.paper);
  const root = {
    ...rootOf(widthMm, heightMm, language),
    role: 'img',
    'stroke-linejoin': 'round',
    'font-family': ['Helvetica', 'Arial', 'Liberation Sans', 'sans-serif'].join(', '),
  };
  const drawn = page.marks.map((mark) => elementOf(mark, heightMm));
  const content = ['', element('title', {}, escaped(title)), ...drawn, ''].join('\n');
  return success(`${element('svg', root, content)}\n`);
}

/** A drawing of that size, whose unit is the mm. */
export function rootOf(widthMm: number, heightMm: number, language: Language) {
  const [width, height] = [numberText(widthMm), numberText(heightMm)];
  return {
    xmlns: 'http://www.w3.org/2000/svg',
    width: `${width}mm`,
    height: `${height}mm`,
    viewBox: ['0', '0', width, height].join(' '),
    'xml:lang': language,
  };
}

function elementOf(mark: Mark, topMm: number): string {
  switch (mark.kind) {
    case 'stroke': {
      const dash = mark.dashMm.length === 0 ? {} : { 'stroke-dasharray': mark.dashMm.map(numberText).join(' ') };
      const line = { fill: 'none', stroke: colour(mark.grey), 'stroke-width': numberText(mark.widthMm), ...dash };
      return element('path', { d: pathOf(mark.path, topMm), ...line });
    }
    case 'fill': {
      const d = mark.paths.map((path) => pathOf(path, topMm)).join(' ');
      return element('path', { d, fill: colour(mark.grey) });
    }
    case 'writing':
      return writingOf(mark, topMm);
  }
}

export function pathOf({ start, steps, closed }: Path, topMm: number): string {
  const at = (...points: readonly Vec2[]): string => points.map((point) => fromTop(point, topMm).join(' ')).join(' ');
  const stepOf = (step: PathStep): string =>
    step.kind === 'line' ? `L${at(step.to)}` : `C${at(step.c1, step.c2, step.to)}`;
  return [`M${at(start)}`, ...steps.map(stepOf), ...(closed ? ['Z'] : [])].join(' ');
}

function writingOf({ text, at, align, font, sizeMm, turnRad, grey }: Writing, topMm: number): string {
  const [x = '', y = ''] = fromTop(at, topMm);
  const degrees = numberText((-turnRad * 180) / Math.PI);
  const attributes = {
    x,
    y,
    'text-anchor': ANCHORS[align],
    textLength: numberText(textWidthMm(text, { font, sizeMm })),
    lengthAdjust: 'spacingAndGlyphs',
    'font-size': numberText(sizeMm),
    'font-weight': WEIGHTS[font],
    fill: colour(grey),
    ...(turnRad === 0 ? {} : { transform: `rotate(${[degrees, x, y].join(' ')})` }),
  };
  return element('text', attributes, escaped(text));
}

const ANCHORS: Readonly<Record<Align, string>> = { left: 'start', middle: 'middle', right: 'end' };
const WEIGHTS: Readonly<Record<Font, string>> = { regular: '400', bold: '700' };

/** SVG counts downwards from the top. */
const fromTop = ([x, y]: Vec2, topMm: number): readonly string[] => [numberText(x), numberText(topMm - y)];

function colour(grey: Grey): string {
  const two = Math.round(grey * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${two}${two}${two}`;
}

export const escaped = (text: string): string =>
  text.replace(/[<>&"]/g, (character) => `&#${character.charCodeAt(0)};`);

/** `content` as it is; attributes hold nothing that would have to be escaped. */
export function element(name: string, attributes: Readonly<Record<string, string>>, content?: string): string {
  const head = [name, ...Object.entries(attributes).map(([key, value]) => `${key}="${value}"`)].join(' ');
  return content === undefined ? `<${head}/>` : `<${head}>${content}</${name}>`;
}
