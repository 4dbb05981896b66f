// The build at work as pieces in their final places; none where the layout is refused, which the verdict tells.

import type { Bench, Pieces } from '@cairnmark/editing';
import type { Stack } from '@cairnmark/geometry';
import { buildStack } from '@cairnmark/geometry';
import { useMemo } from 'preact/hooks';

export function useStack(pieces: Pieces, { solids, slackMm }: Bench): Stack {
  return useMemo(() => {
    const built = buildStack(pieces, solids, slackMm);
    return built.ok ? built.value : NOTHING;
  }, [pieces, solids, slackMm]);
}

const NOTHING: Stack = { pieces: [], supports: [], faceContacts: [] };
