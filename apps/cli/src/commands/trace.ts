// trace: a build measured from two photos and a file of taps.

import type { FittedCamera, Photo, PhotoIssue, TracedTower } from '@cairnmark/photo';
import { markersOf, pagesOf, readSheet, traceTower } from '@cairnmark/photo';
import type { TerminalWords } from '@cairnmark/words';
import { traceWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import { helpAbout } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { NOT_UNDERSTOOD, WELL } from '../exit.ts';
import type { Io } from '../io.ts';
import type { Outcome } from '../read-files.ts';
import { complain, refuse, tell } from '../speak.ts';
import { tableText } from '../table.ts';
import { faultIn, readPhotoFile, readTapsFile } from '../tracing/read-bytes.ts';
import type { TapsFile } from '../tracing/taps-file.ts';

export function trace({ command, rest, taps: file, form, language }: Call, words: TerminalWords, io: Io): ExitCode {
  const help = helpAbout(command);
  const [top, side = null, ...more] = rest;
  const wrong = [
    ...(top === undefined || more.length > 0 ? [words.say('usage.trace-photos', { help })] : []),
    ...(file === null ? [words.say('usage.trace-taps', { help })] : []),
  ];
  if (top === undefined || file === null || wrong.length > 0) {
    for (const fault of wrong) complain(io, fault);
    return NOT_UNDERSTOOD;
  }
  const taps = readTapsFile(file, help, words, io);
  if (!taps.ok) return refuse(io, taps.faults);
  const sentence = issueTold(language, words);
  const seen = [top, side].flatMap((one) => (one === null ? [] : [seenIn(one, taps.value, sentence, words, io)]));
  const faults = seen.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return refuse(io, faults);
  const [above, from = null] = seen.flatMap((one) => (one.ok ? [one.value] : []));
  if (above === undefined) return NOT_UNDERSTOOD;
  const tower = traceTower(above, from, taps.value);
  if (!tower.ok) {
    const lines = tower.issues.map((issue) => faultIn(file, `${words.place(issue.path)}: ${sentence(issue)}`, words));
    return refuse(
      io,
      lines.flatMap((line) => (line.ok ? [] : line.faults)),
    );
  }
  tell(io, FORMS[form](tower.value, above.camera, taps.value, words).trimEnd());
  return WELL;
}

interface Seen {
  readonly photo: Photo;
  readonly camera: FittedCamera;
}

function seenIn(
  file: string,
  { sheet, focal35Mm }: TapsFile,
  sentence: (issue: PhotoIssue) => string,
  words: TerminalWords,
  io: Io,
): Outcome<Seen> {
  const photo = readPhotoFile(file, words, io);
  if (!photo.ok) return photo;
  const camera = readSheet(photo.value, sheet, { focal35Mm });
  if (camera.ok) return { ok: true, value: { photo: photo.value, camera: camera.value } };
  const faults = camera.issues.map((issue) => words.say('file.line', { file, sentence: sentence(issue) }));
  return { ok: false, faults };
}

const issueTold =
  (language: Call['language'], words: TerminalWords) =>
  (issue: PhotoIssue): string =>
    traceWords(language)
      .issue(issue, (value, most) => words.number(Number(value.toFixed(most))))
      .join(' ');

/** Twice the standard deviation covers about 95 % (JCGM 100:2008, 6.2; from memory). */
const COVERAGE = 2;

const FORMS: Readonly<
  Record<Call['form'], (tower: TracedTower, camera: FittedCamera, taps: TapsFile, words: TerminalWords) => string>
> = {
  json: ({ layout, stackedMm, height }) => JSON.stringify({ layout, stackedMm, height }, null, 2),
  csv: (tower) => [CSV_HEAD, ...rowsOf(tower, String)].map((row) => row.join(',')).join('\n'),
  table: (tower, camera, { sheet }, words) => {
    const mm = (value: number): string => `${words.number(Number(value.toFixed(1)), 1)} mm`;
    const tilt = degrees(camera.tiltRad, words);
    const found =
      sheet.kind === 'plain'
        ? words.say('trace.seen-plain', { tilt })
        : words.say('trace.seen', {
            found: camera.markers.length,
            most: pagesOf(sheet.paper, sheet.pages).reduce((sum, { page }) => sum + markersOf(page).length, 0),
            tilt,
          });
    const head = (['piece', 'bottom', 'x', 'y', 'turn'] as const).map((id) => words.say(`trace.head-${id}`));
    const rows = rowsOf(tower, mm, (rad) => degrees(rad, words));
    const { height, stackedMm } = tower;
    return [
      found,
      tableText([head, ...rows], [1, 2, 3, 4]).trimEnd(),
      words.say('trace.stacked', { height: mm(stackedMm) }),
      ...(height === null
        ? []
        : [words.say('trace.height', { height: mm(height.heightMm), error: mm(COVERAGE * height.sigmaMm) })]),
    ].join('\n');
  },
};

const CSV_HEAD = ['kind', 'bottom_mm', 'x_mm', 'y_mm', 'turn_rad'];

const rowsOf = (
  { pieces }: TracedTower,
  length: (mm: number) => string,
  angle: (rad: number) => string = String,
): readonly (readonly string[])[] =>
  pieces.map(({ laid: { kind, xMm, yMm, turnRad }, placed: { bottomMm } }) => [
    kind,
    length(bottomMm),
    length(xMm),
    length(yMm),
    angle(turnRad),
  ]);

const degrees = (rad: number, words: TerminalWords): string =>
  `${words.number(Number(((rad * 180) / Math.PI).toFixed(0)))}°`;
