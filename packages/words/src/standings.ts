// Places, what is marked beside them, and why a build takes none.

import type { Report } from '@cairnmark/engine';
import type { OutReason, RankingKey, RankingRule, Requirement, Standing } from '@cairnmark/scoring';
import { exactAmount, listed, measureName } from './amounts.ts';
import { fellSentence } from './fallen.ts';
import { ruleSentence, stockSentence } from './rules.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

/** "shared with Terns", "within measuring error of Gannets and Eiders"; none where there is nothing to mark. */
export function placeNotes(
  { sharedWith, withinErrorOf }: Pick<Standing, 'sharedWith' | 'withinErrorOf'>,
  { reader, words: { results, and } }: Voice,
): readonly string[] {
  const names = (groups: readonly string[]): string => listed(groups.map(reader.groupName), and);
  return [
    ...(sharedWith.length > 0 ? [fill(results['place.shared'], { groups: names(sharedWith) })] : []),
    ...(withinErrorOf.length > 0 ? [fill(results['place.near'], { groups: names(withinErrorOf) })] : []),
  ];
}

/** Why a group is not ranked, reason by reason, with the numbers of its report where it has one. */
export function outSentences(
  reasons: readonly OutReason[],
  report: Report | null,
  rules: readonly Requirement[],
  voice: Voice,
): string {
  return reasons.map((reason) => outSentence(reason, report, rules, voice)).join(' ');
}

function outSentence(reason: OutReason, report: Report | null, rules: readonly Requirement[], voice: Voice): string {
  const { words } = voice;
  const { results } = words;
  switch (reason.code) {
    case 'rule-broken':
      return fill(results['out.rule-broken'], { why: brokenRules(reason.requirements, report, rules, voice) });
    case 'more-than-the-kit-has':
      return fill(results['out.more-than-the-kit-has'], { why: breaches(reason.kinds, report, voice) });
    case 'not-measured':
      return fill(results['out.not-measured'], { measures: measureNames(reason.measures, voice) });
    case 'fell':
      return fellSentence(report?.state.kind === 'fell' ? report.state : { kind: 'fell-before-measuring' }, words);
    default:
      return results[`out.${reason.code}`];
  }
}

/** "height, more is better, rounded to 0.5 cm; then volume, less is better". */
export function orderText({ first, tieBreaks }: RankingRule, voice: Voice): string {
  return tieBreaks.reduce(
    (text, key) => fill(voice.words.results['order.then'], { first: text, next: keyText(key, voice) }),
    keyText(first, voice),
  );
}

const measureNames = (measures: readonly string[], voice: Voice): string =>
  listed(
    measures.map((measure) => measureName(measure, voice)),
    voice.words.and,
  );

function brokenRules(
  broken: readonly string[],
  report: Report | null,
  rules: readonly Requirement[],
  voice: Voice,
): string {
  const sentences = broken.map((id) => {
    const rule = rules.find((candidate) => candidate.id === id);
    const line = report?.requirements.find(({ requirement }) => requirement === id);
    if (rule === undefined || line === undefined) return id;
    const tolerance = report?.facts.find((fact) => fact.id === line.measure)?.tolerance ?? 0;
    return ruleSentence(line, rule, tolerance, voice);
  });
  return sentences.join(' ');
}

function breaches(kinds: readonly string[], report: Report | null, voice: Voice): string {
  const { reader, words } = voice;
  const told = report?.stockBreaches.filter(({ kind }) => kinds.includes(kind)) ?? [];
  if (told.length === 0) return listed(kinds.map(reader.kindName), words.and);
  return told.map((breach) => stockSentence(breach, voice)).join(' ');
}

function keyText({ by, better, roundTo }: RankingKey, voice: Voice): string {
  const { results } = voice.words;
  const order = fill(results[`order.${better}`], { measure: measureName(by, voice) });
  if (roundTo === 0) return order;
  return fill(results['order.rounded'], { order, step: exactAmount(by, roundTo, voice) });
}
