// What the strip under the scene says: the state of a build, from its report. Pure; the words are found by the strip.

import type { Report } from '@cairnmark/engine';
import type { Layout, Stability } from '@cairnmark/geometry';
import type { RequirementLine } from '@cairnmark/scoring';
import type { Worked } from '../../workers/worked.ts';

export type BuildState =
  | { readonly is: 'empty' }
  | { readonly is: 'working'; readonly progress: Worked<Report>['progress'] }
  | { readonly is: 'stopped' }
  | { readonly is: 'failed' }
  | { readonly is: 'refused' }
  /** `stability`: whether it stands all the same; null: nothing is drawn. */
  | { readonly is: 'rule-broken'; readonly broken: readonly string[]; readonly stability: Stability | null }
  | { readonly is: 'numbers-only' }
  | { readonly is: 'judged'; readonly stability: Stability };

/** How a state looks: `bad` red, `warn` amber, `plain` ink. */
export type Mood = 'plain' | 'warn' | 'bad';

export function buildState(
  layout: Layout,
  { value, working, progress, issues, failed, stopped }: Worked<Report>,
): BuildState {
  if (layout.pieces.length === 0) return { is: 'empty' };
  if (working && (value === null || progress !== null)) return { is: 'working', progress };
  if (failed !== null) return { is: 'failed' };
  if (issues.length > 0) return { is: 'refused' };
  if (value === null || stopped) return { is: 'stopped' };
  const falls = value.stability?.stands === false;
  const broken = brokenRules(value);
  if (broken.length > 0 && !falls) return { is: 'rule-broken', broken, stability: value.stability };
  return value.stability === null ? { is: 'numbers-only' } : { is: 'judged', stability: value.stability };
}

export function moodOf(state: BuildState): Mood {
  if (state.is === 'rule-broken' || state.is === 'failed' || state.is === 'refused') return 'bad';
  if (state.is !== 'judged') return 'plain';
  const { verdict } = state.stability;
  if (verdict === 'falls' || verdict === 'rolls-at-a-touch') return 'bad';
  return verdict === 'wobbly' || verdict === 'too-close-to-call' ? 'warn' : 'plain';
}

/** Ids of measured rules that are broken by having too much or the wrong thing: too little is only not yet enough. */
export function brokenRules({ requirements }: Report): readonly string[] {
  return requirements
    .filter((line) => line.verdict === 'broken' && !isUnfinished(line))
    .map((line) => line.requirement);
}

/** A build with fewer pieces, or lower, than the rule asks is not at fault while it grows. */
export function isUnfinished({ value, limit, comparison }: RequirementLine): boolean {
  if (value === null || limit === null) return false;
  return value < limit && (comparison === 'exactly' || comparison === 'at-least');
}
