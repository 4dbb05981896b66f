// The way of the door "Trace it" to its worker, which ends with the door.

import { useEffect, useMemo } from 'preact/hooks';
import type { PhotoClient, PhotoQuestions } from './photo-questions.ts';
import PhotoWorker from './photo-worker.ts?worker';
import { workerClient } from './worker-client.ts';

export function usePhotoClient(): PhotoClient {
  const client = useMemo(
    () =>
      workerClient<PhotoQuestions>(
        () => new PhotoWorker(),
        () => performance.now(),
        0,
      ),
    [],
  );
  useEffect(() => () => client.cancel(), [client]);
  return client;
}
