// The reports of several tries at once, for instance of all groups at one challenge.

import type { Report } from '@cairnmark/engine';
import { useEffect, useState } from 'react';
import type { Build } from './questions.ts';
import { useEngine } from './use-engine.ts';

/**
 * One report a build, in their order; null until all are there, or when one is refused. Of tries that changed the last
 * reports stand until the new ones come. `builds` must be the same object until something changed.
 */
export function useReports(builds: readonly Build[]): readonly Report[] | null {
  const engine = useEngine();
  const [known, setKnown] = useState<ReadonlyMap<string, Report>>(NONE);
  useEffect(() => {
    let current = true;
    for (const build of builds) {
      const { id } = build.attempt;
      engine
        .ask(`try ${id}`, 'report', build, () => undefined)
        .then((answer) => {
          if (!current || answer === null || !answer.ok) return;
          setKnown((before) => (before.get(id) === answer.value ? before : new Map(before).set(id, answer.value)));
        })
        .catch(() => undefined);
    }
    return () => {
      current = false;
    };
  }, [engine, builds]);
  const reports = builds.map(({ attempt }) => known.get(attempt.id));
  return reports.every((report) => report !== undefined) ? reports : null;
}

const NONE: ReadonlyMap<string, Report> = new Map();
