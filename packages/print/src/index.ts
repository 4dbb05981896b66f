// Sheets to print: pages of marks in mm, as PDF and as SVG.
//
// A sheet is written as a list of blocks, from top to bottom; `layOut` sets them and turns the pages, `framed` puts the foot
// with the check bars under each page, `writePdf` makes the file:
//
//   const blocks: readonly Block[] = [
//     { kind: 'heading', size: 'title', text: words.say('print.measure-title') },
//     { kind: 'fields', labels: [words.say('print.group'), words.say('print.date')] },
//     { kind: 'table', rules: 'grid', columns: [{ widthMm: 50 }, { share: 1 }], head: ['Solid', 'Edge'], rows: ... },
//   ];
//   const sheet = layOut(name, blocks, { paper, print: 'usual', mostPages: 1 });
//   const pages = sheet.ok ? framed(sheet.value, words) : sheet;
//   const pdf = pages.ok ? writePdf(pages.value, title, words.language) : pages;
//
// A sheet knows no sentence: its texts come from `words`. Whatever does not fit comes back as issues with their place, all at
// once, and `words.issue` says them; so a sheet is tested by laying it out in both languages, on both papers and in both
// prints. Writing grows in large print, lengths do not: give a row the least height that a hand needs, never the most,
// unless it must be a certain height (cards to cut out), and allow more pages there.

export type * from './flow/blocks.ts';
export type { Layout } from './flow/lay-out.ts';
export { layOut } from './flow/lay-out.ts';
export type { Print, TextSize, TextSizes } from './flow/sizes.ts';
export { SIZES } from './flow/sizes.ts';
export type { Area, Sheet } from './frame/frame.ts';
export { FOOT_MM, framed, MARGIN_MM, usableArea } from './frame/frame.ts';
export type { GroundSheet } from './ground/ground-pages.ts';
export { groundPages } from './ground/ground-pages.ts';
export type { PrintIssue } from './issue.ts';
export type { GoreOrder } from './nets/gore-sheets.ts';
export { goreSheets } from './nets/gore-sheets.ts';
export { netSheets } from './nets/net-sheets.ts';
export { netSvg } from './nets/net-svg.ts';
export type { LeftOut, NetKind, NetOrder, NetSheets } from './nets/order.ts';
export type { Master } from './packing/pack-masters.ts';
export { packMasters } from './packing/pack-masters.ts';
export type { Packed } from './packing/pack-sheets.ts';
export { packSheets } from './packing/pack-sheets.ts';
export type { Item, Placement, Progress, Space } from './packing/types.ts';
export * from './page/page.ts';
export * from './page/paper.ts';
export * from './page/shapes.ts';
export { writePdf } from './pdf/write-pdf.ts';
export { SHEETS } from './sheets/catalogue.ts';
export { copiesOf } from './sheets/copies.ts';
export type { SheetData, SheetWords, TableCard } from './sheets/data.ts';
export { lacking, makeSheet } from './sheets/make-sheet.ts';
export type { CopyFor, SheetId, SheetKind, SheetNeed } from './sheets/sheet-kind.ts';
export { suitsGrade } from './sheets/suits-grade.ts';
export { usualPupils, usualTabDepthMm } from './sheets/usual.ts';
export { writeSvg } from './svg/write-svg.ts';
export type { Type } from './text/measure.ts';
export { LINE_SHARE, textWidthMm } from './text/measure.ts';
