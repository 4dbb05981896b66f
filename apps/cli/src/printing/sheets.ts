// The sheets of a lesson: all that the challenge has something for, or one of them.

import type { SheetData, SheetId } from '@cairnmark/print';
import { copiesOf, lacking, makeSheet, netSheets, SHEETS, suitsGrade, usualPupils } from '@cairnmark/print';
import { planWords, screenWords } from '@cairnmark/words';
import type { Outcome } from '../read-files.ts';
import { tableText } from '../table.ts';
import type { Job } from './job.ts';
import type { Made } from './made.ts';
import { orderOf } from './net-kinds.ts';

export function printSheets(job: Job): Outcome<Made> {
  const { challenge, faultLine, kitAlone, options, printed, words } = job;
  if (kitAlone) return { ok: false, faults: [words.say('print.kit-alone')] };
  const data = dataOf(job);
  const ids = options.sheet === null ? usualSheets(data) : [options.sheet];
  const made = ids.map((id) => ({ id, sheet: makeSheet(id, data) }));
  const faults = made.flatMap(({ sheet }) => (sheet.ok ? [] : sheet.issues.map(faultLine)));
  if (faults.length > 0) return { ok: false, faults };
  const sheets = made.map(({ id, sheet }) => ({ id, pages: sheet.ok ? sheet.value : [] }));
  const [only] = ids;
  const named =
    ids.length === 1 && only !== undefined ? printed.say(`print.sheet-${only}`) : printed.say('print.sheets');
  const title = printed.say('print.of', { sheet: named, challenge: challenge.name });
  const lines = tableOf(sheets, data, job);
  return { ok: true, value: { title, pages: sheets.flatMap(({ pages }) => pages), drawings: [], lines } };
}

const usualSheets = (data: SheetData): readonly SheetId[] =>
  Object.values(SHEETS)
    .map(({ id }) => id)
    .filter((id) => lacking(id, data) === null && suitsGrade(id, data.challenge.gradePreset));

function dataOf(job: Job): SheetData {
  const { challenge, language, options, paper, printed, record, ruler, words } = job;
  return {
    record,
    challenge,
    ruler,
    pupils: options.pupils ?? usualPupils(record.groups.length),
    netPages: netPagesOf(job),
    cards: [],
    paper,
    print: options.largePrint ? 'large' : 'usual',
    words: { words, printed, plan: planWords(language), screen: screenWords(language) },
  };
}

/** Of one set of the kit; only one sheet tells it. */
function netPagesOf(job: Job): number | null {
  if (job.options.sheet !== null && job.options.sheet !== 'materials') return null;
  const nets = netSheets(orderOf(job, 1), job.printed, () => true);
  return nets.ok && nets.value !== null ? nets.value.pages.length : null;
}

function tableOf(
  sheets: readonly { readonly id: SheetId; readonly pages: readonly unknown[] }[],
  data: SheetData,
  { printed, words }: Job,
): readonly string[] {
  const rows = sheets.map(({ id, pages: { length: count } }) => [
    `  ${printed.say(`print.sheet-${id}`)}`,
    count === 1 ? words.say('print.page') : words.say('print.pages', { count }),
    words.say('print.copies', { count: copiesOf(SHEETS[id].copyFor, data) }),
  ]);
  return [tableText(rows, []).trimEnd()];
}
