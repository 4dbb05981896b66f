// The page's side of the worker for photos. Once it has ended, questions that still wait start no fresh worker: it would hold its
// photo as long as the page lives.

import type { PhotoClient, PhotoQuestions } from './photo-questions.ts';
import { workerClient } from './worker-client.ts';

export function photoClient(start: () => Worker): { readonly client: PhotoClient; end(): void } {
  let isOpen = true;
  const startWhileOpen = (): Worker => {
    if (!isOpen) throw new Error('closed');
    return start();
  };
  const client = workerClient<PhotoQuestions>(startWhileOpen, () => performance.now(), 0);
  const end = (): void => {
    isOpen = false;
    client.cancel();
  };
  return { client, end };
}
