// Words about builds, in the language and units of this device. Apart from the screens' words: they are not needed at the start.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { unitOf } from '@cairnmark/engine';
import type { Ruler } from '@cairnmark/geometry';
import { TILT_BANDS } from '@cairnmark/geometry';
import type { ClassWords, Words } from '@cairnmark/words';
import { classReader } from '@cairnmark/words';
import { useMemo } from 'preact/hooks';
import { useSession } from '../store/use-session.ts';
import { shownRuler } from './shown-ruler.ts';
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
