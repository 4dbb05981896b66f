// The way of the door "Trace it" to its worker, which ends with the door.

import { useEffect, useMemo } from 'preact/hooks';
import { photoClient } from './photo-client.ts';
import type { PhotoClient } from './photo-questions.ts';
import PhotoWorker from './photo-worker.ts?worker';

export function usePhotoClient(): PhotoClient {
  const { client, end } = useMemo(() => photoClient(() => new PhotoWorker()), []);
  useEffect(() => end, [end]);
  return client;
}
