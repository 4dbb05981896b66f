// Reports kept from one scoring of a class to the next: after a tap one attempt has changed, and the others need not be
// judged again. Attempts are known by what stands in them, not by which object they are, for a worker is handed copies.

import type { Result } from '@cairnmark/geometry';
import type { EngineIssue } from '../check/issues.ts';
import type { Setting } from '../evaluate/report.ts';
import { reportOf } from '../evaluate/report.ts';
import type { Report } from '../report-types.ts';
import type { Attempt } from '../types.ts';

/** The report on one attempt of a class. */
export type Evaluator = (attempt: Attempt, setting: Setting) => Result<Report, EngineIssue>;

/**
 * Each call answers with an evaluator for one scoring. It knows what the one before it was asked, and only that: no more
 * is ever kept than the class at hand has. `evaluate`: what is asked when nothing is known.
 */
export function rememberedReports(evaluate: Evaluator = reportOf): () => Evaluator {
  let kept: ReadonlyMap<string, Result<Report, EngineIssue>> = new Map();
  return () => {
    const before = kept;
    const now = new Map<string, Result<Report, EngineIssue>>();
    kept = now;
    const textOf = textsOnce();
    return (attempt, setting) => {
      const key = keyOf(attempt, setting, textOf);
      const result = now.get(key) ?? before.get(key) ?? evaluate(attempt, setting);
      // Issues name the place of the attempt in the record, which may be another one next time.
      if (result.ok) now.set(key, result);
      return result;
    };
  };
}

/** All that a report depends on. With a solver a build may be judged that cannot be judged without. */
function keyOf(
  attempt: Attempt,
  { challenge, group, events, statics }: Setting,
  textOf: (part: object) => string,
): string {
  const { solver, limits } = statics;
  return [solver?.name ?? '', ...[limits, challenge, group, events, attempt].map(textOf)].join('\n');
}

/** As text; a challenge that many attempts share is written once. */
function textsOnce(): (part: object) => string {
  const texts = new WeakMap<object, string>();
  return (part) => {
    const text = texts.get(part) ?? JSON.stringify(part);
    texts.set(part, text);
    return text;
  };
}
