// print: nets, sheets and ground sheets as a PDF.

import { writePdf } from '@cairnmark/print';
import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import { helpAbout } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import type { Io } from '../io.ts';
import type { Job } from '../printing/job.ts';
import { jobOf } from '../printing/job.ts';
import type { Made } from '../printing/made.ts';
import { printNets } from '../printing/nets.ts';
import type { Printed } from '../printing/options.ts';
import { readPrintOptions } from '../printing/options.ts';
import { printGores, printGround } from '../printing/other-pages.ts';
import { printSheets } from '../printing/sheets.ts';
import type { Outcome } from '../read-files.ts';
import { complain, refuse, tell } from '../speak.ts';

export function print(
  { command, rest, challenge, language, print: typed }: Call,
  words: TerminalWords,
  io: Io,
): ExitCode {
  const help = helpAbout(command);
  const { options, faults } = readPrintOptions(typed, help, words);
  const [file = null, ...more] = rest;
  const wrong = more.length === 0 ? faults : [words.say('usage.one-file', { help }), ...faults];
  if (wrong.length > 0) {
    for (const fault of wrong) complain(io, fault);
    return NOT_UNDERSTOOD;
  }
  const job = jobOf({ file, challenge, options, language }, words, io);
  if (!job.ok) return refuse(io, job.faults);
  const made = MAKERS[options.what](job.value);
  if (!made.ok) return refuse(io, made.faults);
  const written = writeAll(made.value, job.value, io);
  if (!written.ok) return refuse(io, written.faults);
  const { record } = job.value;
  tell(
    io,
    [
      ...(record.invented ? [words.say('score.invented')] : []),
      ...written.value,
      ...made.value.lines,
      ...(options.out === null ? [] : [words.say('print.to-scale')]),
    ].join('\n'),
  );
  return WELL;
}

const MAKERS: Readonly<Record<Printed, (job: Job) => Outcome<Made>>> = {
  nets: printNets,
  sheets: printSheets,
  ground: printGround,
  gores: printGores,
};

/** The PDF, then the drawings; a line for each. */
function writeAll(made: Made, job: Job, io: Io): Outcome<readonly string[]> {
  const { options, words } = job;
  const pdf = options.out === null ? { ok: true as const, value: [] } : writtenPdf(made, options.out, job, io);
  if (!pdf.ok || options.svg === null) return pdf;
  const fault = io.makeFolder(options.svg);
  if (fault !== null) {
    return { ok: false, faults: [words.say('file.line', { file: options.svg, sentence: words.say(`file.${fault}`) })] };
  }
  const lines: string[] = [...pdf.value];
  for (const { name, text } of made.drawings) {
    const file = `${options.svg.replace(/\/+$/, '')}/${name}`;
    const drawn = written(file, new TextEncoder().encode(text), words.say('print.drawn', { file }), words, io);
    if (!drawn.ok) return drawn;
    lines.push(...drawn.value);
  }
  return { ok: true, value: lines };
}

function writtenPdf(made: Made, file: string, job: Job, io: Io): Outcome<readonly string[]> {
  const { faultLine, language, paper, printed, words } = job;
  const pdf = writePdf(made.pages, made.title, language);
  if (!pdf.ok) return { ok: false, faults: pdf.issues.map(faultLine) };
  const count = made.pages.length;
  const pages = count === 1 ? words.say('print.page') : words.say('print.pages', { count });
  const line = words.say('print.written', { file, pages, paper: printed.say(`print.paper-${paper}`) });
  return written(file, pdf.value, line, words, io);
}

function written(
  file: string,
  bytes: Uint8Array,
  line: string,
  words: TerminalWords,
  io: Io,
): Outcome<readonly string[]> {
  const outcome = io.writeFile(file, bytes);
  if (outcome.ok) return { ok: true, value: outcome.replaced ? [line, `  ${words.say('print.replaced')}`] : [line] };
  return { ok: false, faults: [words.say('file.line', { file, sentence: words.say(`file.${outcome.fault}`) })] };
}
