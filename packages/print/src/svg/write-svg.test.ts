import { expect, it } from 'vitest';
import type { Mark, Page } from '../page/page.ts';
import { rectangle, segment, solidLine } from '../page/shapes.ts';
import { writeSvg } from './write-svg.ts';

const svgOf = (...marks: readonly Mark[]): string => {
  const svg = writeSvg({ paper: { size: 'a4', orientation: 'portrait' }, marks }, 'Nets <1> & "2"', 'en');
  if (!svg.ok) throw new Error(JSON.stringify(svg.issues));
  return svg.value;
};

it('is as large as the paper, in mm, and counts from the top', () => {
  const svg = svgOf({ ...solidLine(segment([10, 20], [60, 287]), 0.35), dashMm: [2, 1.5] });
  expect(svg).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
  expect(svg).toContain(
    '<path d="M10 277 L60 10" fill="none" stroke="#000000" stroke-width="0.35" stroke-dasharray="2 1.5"/>',
  );
});

it('has curves, holes and greys', () => {
  const curve = { kind: 'curve', c1: [0, 10], c2: [5, 17], to: [17, 17] } as const;
  expect(svgOf(solidLine({ start: [0, 0], steps: [curve], closed: true }, 0.25))).toContain(
    'd="M0 297 C0 287 5 280 17 280 Z"',
  );
  const fill: Mark = { kind: 'fill', paths: [rectangle([0, 0], 3, 5), rectangle([10, 0], 3, 5)], grey: 0.2 };
  expect(svgOf(fill)).toMatch(/<path d="M0 297 .* Z M10 297 .* Z" fill="#333333"\/>/);
});

it('has writing as wide as in the PDF, turned the same way, with its signs as text', () => {
  const look = { kind: 'writing', align: 'middle', font: 'bold', sizeMm: 10, turnRad: Math.PI / 6, grey: 0 } as const;
  // Helvetica-Bold.afm: A 722, < 584, & 722.
  expect(svgOf({ ...look, text: 'A<&', at: [30, 97] })).toContain(
    '<text x="30" y="200" text-anchor="middle" textLength="20.28" lengthAdjust="spacingAndGlyphs" font-size="10" font-weight="700" fill="#000000" transform="rotate(-30 30 200)">A&#60;&#38;</text>',
  );
  expect(svgOf()).toContain('<title>Nets &#60;1&#62; &#38; &#34;2&#34;</title>');
});

it('shows nothing that could not be printed', () => {
  const page: Page = {
    paper: { size: 'a4', orientation: 'portrait' },
    marks: [
      { kind: 'writing', text: '√5', at: [9, 9], align: 'left', font: 'regular', sizeMm: 5, turnRad: 0, grey: 0 },
    ],
  };
  expect(writeSvg(page, 'Roots', 'en')).toEqual({
    ok: false,
    issues: [
      { code: 'character-unprintable', path: ['pages', 0, 'marks', 0], details: { character: '√', text: '√5' } },
    ],
  });
});
