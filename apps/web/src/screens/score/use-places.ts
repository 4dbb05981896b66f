// Reports of all groups' tries at the challenge, and the places that follow from them.

import type { Report } from '@cairnmark/engine';
import { standings } from '@cairnmark/engine';
import type { Standing } from '@cairnmark/scoring';
import { useMemo } from 'preact/hooks';
import { useSession } from '../../store/use-session.ts';
import type { Build } from '../../workers/questions.ts';
import { NO_STROKES } from '../../workers/use-engine.ts';
import { useReports } from '../../workers/use-reports.ts';
import type { Card } from './card.ts';
import { toldStanding } from './told-standing.ts';

export interface Places {
  /** null until all are worked out. */
  readonly reports: readonly Report[] | null;
  readonly working: boolean;
  /** Of the group at the card; null as well while the Board keeps its place hidden. */
  readonly standing: Standing | null;
}

export function usePlaces({ record, challenge, group }: Card['at']): Places {
  const { attempts, groups } = record;
  const board = useSession((session) => session.board);
  const events = record.supplies[challenge.id] ?? NO_STROKES;
  const builds = useMemo(
    () =>
      attempts
        .filter((attempt) => attempt.challenge === challenge.id)
        .flatMap((attempt): Build[] => {
          const of = groups.find(({ id }) => id === attempt.group);
          return of === undefined ? [] : [{ attempt, challenge, group: of, events }];
        }),
    [attempts, groups, challenge, events],
  );
  const { reports, working } = useReports(builds);
  const places = reports === null ? [] : standings(reports, challenge, groups);
  const own = places.find((one) => one.group === group.id) ?? null;
  return { reports, working, standing: toldStanding(own, places, challenge.id, board) };
}
