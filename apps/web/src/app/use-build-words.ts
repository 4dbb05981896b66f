// Words about builds, in the language and units of this device. Apart from the screens' words: they are not needed at the start.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { unitOf } from '@cairnmark/engine';
import type { Ruler, RulerId } from '@cairnmark/geometry';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import type { ClassWords, Words } from '@cairnmark/words';
import { classReader } from '@cairnmark/words';
import { useMemo } from 'preact/hooks';
import type { Units } from '../store/device.ts';
import { useSession } from '../store/use-session.ts';
import { useWords } from './use-words.ts';

export interface BuildWords {
  readonly words: Words;
  readonly inClass: ClassWords;
  readonly ruler: Ruler;
}

export function useBuildWords(challenge: Challenge, { groups }: ClassRecord): BuildWords {
  const words = useWords();
  const units = useSession((session) => session.units);
  return useMemo(() => {
    const ruler = shownRuler(challenge.ruler, units);
    const reader = classReader(challenge, groups, { ruler, bands: TILT_BANDS, unitOf });
    return { words, ruler, inClass: words.inClass(reader) };
  }, [words, units, challenge, groups]);
}

/** The ruler that numbers are shown with: the class's own, or the finest of the other kind. Sizes are never changed by it. */
export function shownRuler(id: RulerId, units: Units | null): Ruler {
  const own = rulerOf(id);
  const shown = units ?? (own.unit === 'in' ? 'in' : 'cm');
  if (shown === 'in') return own.unit === 'in' ? own : rulerOf('sixteenth-inch');
  // Millimetres are the divisions of a ruler that is numbered in centimetres.
  const metric = own.unit === 'in' ? rulerOf('mm') : own;
  return { ...metric, unit: 'cm' };
}
