// Nets on pages, and as drawings for machines that cut.

import { makeNet } from '@cairnmark/nets';
import type { NetOrder, NetSheets } from '@cairnmark/print';
import { netSheets, netSvg } from '@cairnmark/print';
import type { Outcome } from '../read-files.ts';
import type { Job } from './job.ts';
import type { Made } from './made.ts';
import { isPaper, orderOf } from './net-kinds.ts';

export function printNets(job: Job): Outcome<Made> {
  const { faultLine, options, printed, record, words } = job;
  const order = orderOf(job, options.sets);
  const drawings = options.svg === null ? [] : drawingsOf(order, job);
  const title = `${printed.say('print.nets')}: ${record.name}`;
  const others = notPaperLines(job);
  if (options.out === null) {
    if (drawings.length === 0) return { ok: false, faults: [...others, words.say('print.no-paper')] };
    return { ok: true, value: { title, pages: [], drawings, lines: others } };
  }
  const sheets = netSheets(order, printed, () => true);
  if (!sheets.ok) return { ok: false, faults: sheets.issues.map(faultLine) };
  const left = sheets.value === null ? others : [...leftOutLines(sheets.value, job), ...others];
  if (sheets.value === null || sheets.value.pages.length === 0) {
    return { ok: false, faults: [...left, words.say('print.no-paper')] };
  }
  const lines = [...contentLines(sheets.value, job), ...left];
  return { ok: true, value: { title, pages: sheets.value.pages, drawings, lines } };
}

/** Whole: a machine that cuts has its own table, and no page. */
function drawingsOf({ kinds, tabDepthMm }: NetOrder, { language }: Job): Made['drawings'] {
  return kinds.flatMap(({ id, name, solid, base = 'closed' }) => {
    const net = makeNet(solid, { tabDepthMm, base });
    return net.ok ? [{ name: `${id}.svg`, text: netSvg(net.value, name, language) }] : [];
  });
}

function contentLines({ copies, counts }: NetSheets, { challenge, options, words }: Job): readonly string[] {
  const all = [...counts.values()].reduce((sum, count) => sum + count, 0);
  const nets = all === 1 ? words.say('print.net') : words.say('print.net-count', { count: all });
  const kinds = challenge.kit.kinds.flatMap(({ id, name }) => {
    const count = counts.get(id);
    return count === undefined ? [] : [words.say('print.kind', { kind: name, count })];
  });
  const paper = copies.reduce((sum, count) => sum + count, 0);
  return [
    words.say('print.nets', { nets, kinds: kinds.join(', ') }),
    ...(options.masters ? [words.say('print.sheets-of-paper', { count: paper })] : []),
  ];
}

function leftOutLines({ leftOut }: NetSheets, { challenge, options, printed, ruler, words }: Job): readonly string[] {
  const nameOf = (id: string): string => challenge.kit.kinds.find((kind) => kind.id === id)?.name ?? id;
  const splitHelps = !options.split && leftOut.some(({ issue }) => Number(issue.details['parts']) > 0);
  return [
    ...leftOut.map(({ kind, issue }) => {
      return words.say('print.left-out', { sentence: printed.leftOut(nameOf(kind), issue, words, ruler) });
    }),
    ...(splitHelps ? [words.say('print.try-split')] : []),
  ];
}

function notPaperLines({ challenge, words }: Job): readonly string[] {
  const others = challenge.kit.kinds.filter((kind) => !isPaper(kind)).map(({ name }) => name);
  return others.length === 0 ? [] : [words.say('print.not-paper', { kinds: words.listed(others) })];
}
