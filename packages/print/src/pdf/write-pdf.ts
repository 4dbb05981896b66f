// Pages as a PDF. No date, no random id and no compression: the same pages give the same bytes. The fonts are two of the
// fourteen that every program for PDF brings along, so that none is in the file.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { Language } from '@cairnmark/words';
import type { PrintIssue } from '../issue.ts';
import type { Font, Page } from '../page/page.ts';
import { extentOf } from '../page/paper.ts';
import { unprintable } from '../page/unprintable.ts';
import { contentOf, FONT_NAMES, POINTS_PER_MM } from './content.ts';
import { fileOf } from './file.ts';
import { numberText } from './number.ts';

/**
 * A PDF 1.4 of the pages, with its title and its language, which printers are asked not to scale. Refused with
 * 'character-unprintable', at ["pages", 2, "marks", 7], where writing has a character outside of WinAnsiEncoding; the title
 * may have any.
 */
export function writePdf(pages: readonly Page[], title: string, language: Language): Result<Uint8Array, PrintIssue> {
  const issues = unprintable(pages);
  if (issues.length > 0) return failure(issues);
  const kids = pages.map((_, k) => `${pageNumber(k)} 0 R`);
  const objects = [
    `<< /Type /Catalog /Pages ${TREE} 0 R /Lang (${language}) /ViewerPreferences ${PREFERENCES} >>`,
    `<< /Title <${utf16(title)}> >>`,
    `<< /Type /Pages /Kids [${kids.join(' ')}] /Count ${pages.length} /Resources ${RESOURCES} >>`,
    fontOf('Helvetica'),
    fontOf('Helvetica-Bold'),
    ...pages.flatMap((page, k) => [pageOf(page, pageNumber(k) + 1), streamOf(contentOf(page.marks))]),
  ];
  return success(fileOf(objects, { root: CATALOGUE, info: INFO }));
}

const CATALOGUE = 1;
const INFO = 2;
const TREE = 3;
const FONTS: Readonly<Record<Font, number>> = { regular: 4, bold: 5 };
const FIRST_PAGE = 6;

/** Each page is followed by what stands on it. */
const pageNumber = (k: number): number => FIRST_PAGE + 2 * k;

const PREFERENCES = '<< /PrintScaling /None /DisplayDocTitle true >>';

const RESOURCES = `<< /Font << ${(['regular', 'bold'] as const)
  .map((font) => `/${FONT_NAMES[font]} ${FONTS[font]} 0 R`)
  .join(' ')} >> >>`;

const fontOf = (name: string): string =>
  `<< /Type /Font /Subtype /Type1 /BaseFont /${name} /Encoding /WinAnsiEncoding >>`;

function pageOf({ paper }: Page, content: number): string {
  const { widthMm, heightMm } = extentOf(paper);
  const corner = [widthMm, heightMm].map((mm) => numberText(mm * POINTS_PER_MM)).join(' ');
  return `<< /Type /Page /Parent ${TREE} 0 R /MediaBox [0 0 ${corner}] /Contents ${content} 0 R >>`;
}

const streamOf = (content: string): string => `<< /Length ${content.length} >>\nstream\n${content}\nendstream`;

/** As hexadecimal digits, after the mark that says so (chapter 7.9.2). */
function utf16(text: string): string {
  const units = Array.from({ length: text.length }, (_, k) => text.charCodeAt(k));
  return [0xfeff, ...units].map((unit) => unit.toString(16).padStart(4, '0')).join('');
}
