// The way of Fair points to its worker: a question is put by hand, and goes on until it is answered or stopped.

import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import type { FairClient, FairQuestions } from './fair-questions.ts';
import FairWorker from './fair-worker.ts?worker';
import { workerClient } from './worker-client.ts';

export type Searched<T> =
  | { readonly kind: 'idle' | 'stopped' | 'failed' }
  /** `steps`: looked at so far. */
  | { readonly kind: 'working'; readonly steps: number }
  | { readonly kind: 'answered'; readonly answer: T };

export interface Search<T extends keyof FairQuestions> {
  readonly found: Searched<FairQuestions[T]['answer']>;
  ask(question: FairQuestions[T]['ask']): void;
  stop(): void;
  /** What was found belongs to a question that stands no more. */
  forget(): void;
}

/** A worker that ends with the part that asks it. */
export function useFairSearch<T extends keyof FairQuestions>(topic: T): Search<T> {
  const client = useClient();
  const [found, setFound] = useState<Searched<FairQuestions[T]['answer']>>({ kind: 'idle' });
  const ask = useCallback(
    (question: FairQuestions[T]['ask']): void => {
      setFound({ kind: 'working', steps: 0 });
      client
        .ask(topic, topic, question, (steps) => setFound({ kind: 'working', steps }))
        .then((answer) => answer !== null && setFound({ kind: 'answered', answer }))
        .catch(() => setFound({ kind: 'failed' }));
    },
    [client, topic],
  );
  const stop = useCallback((): void => {
    client.cancel();
    setFound({ kind: 'stopped' });
  }, [client]);
  const forget = useCallback((): void => {
    client.cancel();
    setFound({ kind: 'idle' });
  }, [client]);
  return { found, ask, stop, forget };
}

function useClient(): FairClient {
  const client = useMemo(
    () =>
      workerClient<FairQuestions>(
        () => new FairWorker(),
        () => performance.now(),
        0,
      ),
    [],
  );
  useEffect(() => () => client.cancel(), [client]);
  return client;
}
