// Why it stands or falls, ready to draw: only while somebody asks, and only for the build that the report is of.

import { stabilityQuestion, USUAL_LIMITS } from '@cairnmark/engine';
import { pose } from '@cairnmark/geometry';
import { useMemo } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import { overlayOf } from '../../scene/overlay-of.ts';
import type { Why } from '../../scene/picture.ts';
import type { Shown } from './shown.ts';

export function useWhy({ at, worked, why, dragging }: Shown): Why | null {
  const screen = useScreenWords();
  const { attempt, challenge, group } = at;
  const stability = worked.value?.stability ?? null;
  // What falls is always drawn as falling; what stands shows why only when asked.
  // While a piece is dragged the report is of the build that it would give, which has other pieces than this one.
  const wanted = stability !== null && !dragging && !worked.working && (why || stability.verdict === 'falls');
  return useMemo(() => {
    if (!wanted || attempt === null || stability === null) return null;
    const question = stabilityQuestion(attempt, challenge, group, { solver: null, limits: USUAL_LIMITS });
    if (question === null) return null;
    const posed = pose(question, question.pieces);
    if (!posed.ok) return null;
    const labels = {
      balance: screen.say('why.balance'),
      heldUp: screen.say('why.held'),
      edge: screen.say('why.edge'),
      point: screen.say('why.point'),
    };
    return { overlay: overlayOf(stability, posed.value), labels };
  }, [wanted, attempt, challenge, group, stability, screen]);
}
