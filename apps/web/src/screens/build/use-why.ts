// Why it stands or falls, ready to draw: only while somebody asks, and only for the build that the report is of.

import type { Stability } from '@cairnmark/geometry';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import type { StabilityOverlay } from '../../scene/overlay-of.ts';
import type { Why } from '../../scene/picture.ts';
import { buildOf, useEngine } from '../../workers/use-engine.ts';
import type { Shown } from './shown.ts';

export function useWhy(shown: Shown): Why | null {
  const screen = useScreenWords();
  const overlay = useOverlay(shown);
  return useMemo(() => {
    if (overlay === null) return null;
    const labels = {
      balance: screen.say('why.balance'),
      heldUp: screen.say('why.held'),
      edge: screen.say('why.edge'),
      point: screen.say('why.point'),
    };
    return { overlay, labels };
  }, [overlay, screen]);
}

function useOverlay({ at, worked, why, dragging }: Shown): StabilityOverlay | null {
  const engine = useEngine();
  const { attempt, challenge, group } = at;
  const stability = worked.value?.stability ?? null;
  // What falls is always drawn as falling; what stands shows why only when asked.
  // While a piece is dragged the report is of the build that it would give, which has other pieces than this one.
  const wanted = stability !== null && !dragging && !worked.working && (why || stability.verdict === 'falls');
  const [found, setFound] = useState<{ readonly of: Stability; readonly overlay: StabilityOverlay | null } | null>(
    null,
  );
  useEffect(() => {
    const build = buildOf(at);
    if (!wanted || build === null || stability === null) return;
    let here = true;
    engine
      .ask('why', 'overlay', { ...build, stability }, ignore)
      .then((overlay) => here && setFound({ of: stability, overlay }))
      // The build is there without its marks, and the words below it say the same.
      .catch(ignore);
    return () => {
      here = false;
    };
    // Of the class, only what the build hangs on.
  }, [engine, wanted, attempt, challenge, group, stability]);
  return wanted && found?.of === stability ? found.overlay : null;
}

const ignore = (): void => undefined;
