// The words of the device's language: those of the screens, and those about builds.

import type { ScreenWords } from '@cairnmark/words';
import { screenWords } from '@cairnmark/words';
import { useMemo } from 'preact/hooks';
import { useSession } from '../store/use-session.ts';

export function useScreenWords(): ScreenWords {
  const language = useSession((session) => session.language);
  return useMemo(() => screenWords(language), [language]);
}
