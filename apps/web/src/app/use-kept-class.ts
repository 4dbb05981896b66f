// A reloaded page goes on with the class it had: its place is remembered, the class is read from the storage.

import { useEffect, useState } from 'preact/hooks';
import { useSession } from '../store/use-session.ts';
import { useStorage } from '../store/use-storage.ts';

/** True while the storage is asked. The first screen does not wait for it. */
export function useKeptClass(): boolean {
  const storage = useStorage();
  const place = useSession((session) => session.place);
  const record = useSession((session) => session.record);
  const resume = useSession((session) => session.resume);
  const [looking, setLooking] = useState(() => place !== null && record === null && !atStart());
  useEffect(() => {
    if (!looking || place === null) return;
    storage
      .open(place.classId)
      .then((kept) => {
        if (kept?.ok) resume(place.classId, kept.value);
      })
      .catch(() => undefined)
      .finally(() => setLooking(false));
  }, [looking, place, storage, resume]);
  return looking;
}

const atStart = (): boolean => ['', '#', '#/'].includes(location.hash);
