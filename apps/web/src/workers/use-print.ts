// The way of the Print screen to its workers. Nets take seconds: they have a worker of their own, so that the other sheets
// are there at once.

import { useEffect, useMemo, useState } from 'preact/hooks';
import type { PrintClient, PrintQuestions } from './print-questions.ts';
import PrintWorker from './print-worker.ts?worker';
import { workerClient } from './worker-client.ts';

export interface Made<T> {
  /** The last answer; while `working` of an older question. null: none yet, or nothing was asked. */
  readonly value: T | null;
  readonly working: boolean;
  /** How far it is, from 0 to 1. */
  readonly share: number;
  readonly failed: boolean;
}

type Topic = keyof PrintQuestions;

/** `ask` must be the same object until something changed. null: nothing to ask. */
export function usePrint<T extends Topic>(
  topic: T,
  ask: PrintQuestions[T]['ask'] | null,
): Made<PrintQuestions[T]['answer']> {
  const client = useClient();
  const [made, setMade] = useState<Made<PrintQuestions[T]['answer']>>(NOTHING);
  useEffect(() => {
    if (ask === null) {
      setMade(NOTHING);
      return;
    }
    let current = true;
    const update = (change: Partial<Made<PrintQuestions[T]['answer']>>): void => {
      if (current) setMade((before) => ({ ...before, ...change }));
    };
    update({ working: true, share: 0, failed: false });
    client
      .ask(topic, topic, ask, (done, most) => update({ share: most === 0 ? 1 : done / most }))
      .then((value) => value !== null && update({ value, working: false }))
      .catch(() => update({ value: null, working: false, failed: true }));
    return () => {
      current = false;
    };
  }, [client, topic, ask]);
  return made;
}

const NOTHING = { value: null, working: false, share: 0, failed: false } as const;

/** A worker that ends with the screen, and at once when other settings make its work vain: it remembers nothing. */
function useClient(): PrintClient {
  const client = useMemo(
    () =>
      workerClient<PrintQuestions>(
        () => new PrintWorker(),
        () => performance.now(),
        0,
      ),
    [],
  );
  useEffect(() => () => client.cancel(), [client]);
  return client;
}
