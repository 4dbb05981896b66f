// The reports of several tries at once, for instance of all groups at one challenge.

import type { Report } from '@cairnmark/engine';
import { useEffect, useState } from 'preact/hooks';
import type { Build } from './questions.ts';
import { useEngine } from './use-engine.ts';
import { behind } from './worker-client.ts';

export interface Reports {
  /** One a build, in their order; null until all are there, or when one is refused. */
  readonly reports: readonly Report[] | null;
  readonly working: boolean;
}

/** Of tries that changed the last reports stand until the new ones come. `builds` must be the same object until something changed. */
export function useReports(builds: readonly Build[]): Reports {
  const engine = useEngine();
  const [known, setKnown] = useState<ReadonlyMap<string, Report>>(NONE);
  const [answered, setAnswered] = useState<readonly Build[] | null>(null);
  useEffect(() => {
    let current = true;
    const asked = builds.map(async (build) => {
      const { id } = build.attempt;
      const answer = await engine.ask(behind(id), 'report', build, () => undefined);
      if (!current || answer === null) return;
      setKnown((before) => withAnswer(before, id, answer.ok ? answer.value : null));
    });
    void Promise.allSettled(asked).then(() => {
      if (current) setAnswered(builds);
    });
    return () => {
      current = false;
    };
  }, [engine, builds]);
  const reports = builds.map(({ attempt }) => known.get(attempt.id));
  return { reports: reports.every((report) => report !== undefined) ? reports : null, working: answered !== builds };
}

/** null: it was refused, and what was known of the try before is of another build. */
function withAnswer(
  before: ReadonlyMap<string, Report>,
  id: string,
  report: Report | null,
): ReadonlyMap<string, Report> {
  if ((before.get(id) ?? null) === report) return before;
  return report === null ? new Map([...before].filter(([known]) => known !== id)) : new Map(before).set(id, report);
}

const NONE: ReadonlyMap<string, Report> = new Map();
