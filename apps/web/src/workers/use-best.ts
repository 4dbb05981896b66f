// The page's way to the worker that looks for the best possible build.

import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import type { BestClient, BestFound, BestQuestions } from './best-questions.ts';
import BestWorker from './best-worker.ts?worker';
import { workerClient } from './worker-client.ts';

export type BestSearch =
  | { readonly kind: 'idle' | 'stopped' | 'failed' }
  /** `tried`: pieces set so far. */
  | { readonly kind: 'working'; readonly tried: number }
  | { readonly kind: 'found'; readonly found: BestFound };

export interface Best {
  readonly search: BestSearch;
  ask(question: BestQuestions['best']['ask']): void;
  stop(): void;
  /** What was found is of rules that stand no more. */
  forget(): void;
}

/** A worker that ends with the part that asks it. */
export function useBest(): Best {
  const client = useClient();
  const [search, setSearch] = useState<BestSearch>(IDLE);
  const ask = useCallback(
    (question: BestQuestions['best']['ask']): void => {
      setSearch({ kind: 'working', tried: 0 });
      client
        .ask('best', 'best', question, (tried) => setSearch({ kind: 'working', tried }))
        .then((found) => found !== null && setSearch({ kind: 'found', found }))
        .catch(() => setSearch({ kind: 'failed' }));
    },
    [client],
  );
  const stop = useCallback((): void => {
    client.cancel();
    setSearch({ kind: 'stopped' });
  }, [client]);
  const forget = useCallback((): void => {
    client.cancel();
    setSearch(IDLE);
  }, [client]);
  return { search, ask, stop, forget };
}

const IDLE: BestSearch = { kind: 'idle' };

function useClient(): BestClient {
  const client = useMemo(
    () =>
      workerClient<BestQuestions>(
        () => new BestWorker(),
        () => performance.now(),
        0,
      ),
    [],
  );
  useEffect(() => () => client.cancel(), [client]);
  return client;
}
