// Moments of a record, shown as a day and a time of this device, in its language.

import { useMemo } from 'preact/hooks';
import { useSession } from '../store/use-session.ts';

export function useMoments(): (instant: string) => string {
  const language = useSession((session) => session.language);
  return useMemo(() => {
    const format = new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short' });
    return (instant) => format.format(new Date(instant));
  }, [language]);
}
