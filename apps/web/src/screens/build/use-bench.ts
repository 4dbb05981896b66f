// What the group at work may build with: solids in its own sizes, and how many pieces of each kind.

import type { Bench } from '@cairnmark/editing';
import type { Challenge, Group } from '@cairnmark/engine';
import type { SupplyEvent } from '@cairnmark/scoring';
import { useMemo } from 'preact/hooks';
import { solidsOf } from '../../drawing/solids-of.ts';
import type { At } from '../../store/where-at.ts';
import { NO_STROKES } from '../../workers/use-engine.ts';
import { stockToBuild } from './stock-to-build.ts';

export function useBench({ challenge, group, record }: At): Bench {
  const events = record.supplies[challenge.id] ?? NO_STROKES;
  return useMemo(() => benchOf(challenge, group, events), [challenge, group, events]);
}

function benchOf(challenge: Challenge, group: Group, events: readonly SupplyEvent[]): Bench {
  return {
    solids: solidsOf(challenge, group),
    stock: stockToBuild(challenge, group, events),
    slackMm: challenge.slackMm,
  };
}
