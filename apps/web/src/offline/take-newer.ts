// A page that begins while a newer version lies ready lets it take over before anything stands on the screen, unless other
// pages are open: those go on with the version that they began with. So a reload is enough to get the newer one.

import { serviceWorkers } from './service-workers.ts';

/** How long a page waits for the answer whether it is the only one, before it begins as it is, ms. A slow device needs a part of it. */
const WAIT_MS = 3000;

/** True: the page is being loaded anew, and is not to begin. Whatever goes wrong, the page begins as it is. */
export const takeNewer = (): Promise<boolean> => taken().catch(() => false);

async function taken(): Promise<boolean> {
  const workers = serviceWorkers();
  // Without a worker the page came from the network, and is as new as can be.
  if (workers === null || workers.controller === null) return false;
  const ours = await workers.getRegistration().catch(() => undefined);
  // A host may have a worker of its own above our folder.
  if (ours?.scope !== new URL('./', location.href).href || ours.waiting === null) return false;
  // Two steps: a worker that answers too late has not taken over behind a page that went on without it.
  const alone = await Promise.race([answerOf(ours.waiting, 'alone?'), after(WAIT_MS)]);
  const isTaken = alone && (await Promise.race([changeOf(workers), refusalOf(ours.waiting)]));
  if (isTaken) location.reload();
  return isTaken;
}

/** Settles once pages are answered by the newer worker. */
const changeOf = (workers: ServiceWorkerContainer): Promise<true> =>
  new Promise((settle) => workers.addEventListener('controllerchange', () => settle(true), { once: true }));

/** Asks it to take over; settles when it does not, for a further page has been opened meanwhile. */
const refusalOf = (worker: ServiceWorker): Promise<false> =>
  new Promise((settle, fail) => {
    answerOf(worker, 'take-over').then((taken) => {
      if (!taken) settle(false);
    }, fail);
  });

const answerOf = (worker: ServiceWorker, question: 'alone?' | 'take-over'): Promise<boolean> =>
  new Promise((settle) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => settle(data === true);
    worker.postMessage(question, [port2]);
  });

const after = (ms: number): Promise<false> => new Promise((settle) => setTimeout(settle, ms, false));
