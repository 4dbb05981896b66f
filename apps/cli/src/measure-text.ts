// One build for people: the group's own results, every fact with its working, how it was measured, whether it stands, the
// rules, the supply, the points.

import type { Challenge, ClassRecord, Report, ReportedFact } from '@cairnmark/engine';
import { gapAllowanceOf, isShown } from '@cairnmark/engine';
import type { Layout } from '@cairnmark/geometry';
import { CONTACT_MM } from '@cairnmark/geometry';
import type { ClassWords, TerminalWords } from '@cairnmark/words';
import { readerOf } from './class-reader.ts';
import type { Scene } from './points-text.ts';
import { fallenLines, ownLines, pointsLines, ruleLines } from './points-text.ts';
import { section } from './section.ts';
import { stabilityLines } from './stability-text.ts';

/** `layout`: that of the attempt on which the report is. */
export function measureText(
  report: Report,
  layout: Layout,
  challenge: Challenge,
  record: ClassRecord,
  words: TerminalWords,
): string {
  const reader = readerOf(challenge, record.groups);
  const classWords = words.inClass(reader);
  const title = words.say('measure.title', {
    group: reader.groupName(report.group),
    challenge: challenge.name,
    attempt: report.attempt,
  });
  const head = [title, ...(record.invented ? [words.say('score.invented')] : []), ''];
  const { kind: state } = report.state;
  if (state === 'absent' || state === 'not-taking-part') {
    return [...head, classWords.out([{ code: state }], report, challenge.requirements)].join('\n');
  }
  const scene = { challenge, words: classWords };
  const facts = report.facts.filter(({ id }) => isShown(id, challenge));
  return [
    ...head,
    ...fallenLines(report, scene).flatMap((line) => [line, '']),
    ...ownSection(report, scene, words),
    ...facts.filter(isWorthALine).flatMap((fact) => factLines(fact, classWords, words)),
    '',
    ...hiddenLine(report, scene, words),
    ...wayOfMeasuring(report, challenge, layout, classWords, words),
    ...section(words.say('measure.stands'), stabilityLines(report.stability, layout, classWords, words)),
    ...section(
      `${words.say('measure.rules')}:`,
      ruleLines(report, scene, () => true),
    ),
    ...section(
      `${words.say('measure.supply')}:`,
      report.supply === null ? [] : [...classWords.supply(report.supply), ...gameLines(challenge, words)],
    ),
    ...section(`${words.say('measure.stock')}:`, report.stockBreaches.map(classWords.stock)),
    ...section(`${words.say('score.rows')}:`, pointsLines(report, scene, words)),
  ].join('\n');
}

/** Own results come first: the values that are right stand further down, and here only in the pi of the class. */
function ownSection(report: Report, scene: Scene, words: TerminalWords): readonly string[] {
  if (report.own.length === 0) return [];
  const { pi } = scene.challenge.own;
  const expected = report.own.flatMap((line) => scene.words.ownExpected(line, pi) ?? []);
  const lines = [...ownLines(report, scene), ...expected];
  return [`${words.say('measure.own')}:`, ...lines.map((line) => `  ${line}`), ''];
}

const gameLines = ({ supply }: Challenge, words: TerminalWords): readonly string[] =>
  supply === null ? [] : words.game(supply);

/** Which measures were left out, so that nobody takes them for forgotten. */
function hiddenLine(
  { facts }: Report,
  { challenge, words: classWords }: Scene,
  words: TerminalWords,
): readonly string[] {
  const hidden = facts.filter(({ id }) => !isShown(id, challenge)).map(({ id }) => classWords.label(id));
  return hidden.length === 0 ? [] : [words.say('measure.hidden', { measures: words.listed(hidden) })];
}

/** A kind of piece of which the build has none is left out: a kit holds a dozen of them. */
const isWorthALine = ({ id, value }: ReportedFact): boolean => !(id.startsWith('kind:') && value === 0);

/** The value that counts, the others beside it, and the working of the one that was worked out, unless it is 0. */
function factLines(fact: ReportedFact, classWords: ClassWords, words: TerminalWords): readonly string[] {
  const name = words.capital(classWords.label(fact.id));
  const value = classWords.fact(fact);
  const head =
    fact.source === null ? value : words.say('measure.source', { value, source: words.names.sources[fact.source] });
  const { predicted } = fact;
  const hasWorking = predicted?.status === 'measured' && predicted.value !== 0;
  const working = hasWorking ? classWords.working(predicted.working) : [];
  return [`${name}: ${head}`, ...[...classWords.otherValues(fact), ...working].map((line) => `    ${line}`)];
}

/** What the numbers rest on: which ground counts as the base, how things are counted, what touches, what is closed. */
function wayOfMeasuring(
  { gaps }: Report,
  challenge: Challenge,
  layout: Layout,
  classWords: ClassWords,
  words: TerminalWords,
): readonly string[] {
  return [
    words.say('measure.base', { base: words.names.base[challenge.base] }),
    words.say('measure.counting', { counting: words.names.counting[challenge.counting] }),
    words.say('measure.touching', { contact: `${words.number(CONTACT_MM)} mm` }),
    words.say('measure.gap-allowance', { gap: `${words.number(gapAllowanceOf(challenge, layout))} mm` }),
    ...(gaps.length > 0 ? gaps.map(classWords.gap) : [words.say('measure.no-gaps')]),
    words.say('working.digits'),
    words.say('working.letters'),
    words.say('working.count-letters'),
  ];
}
