// A page that begins while a newer version lies ready lets it take over before anything stands on the screen, unless other
// pages are open: those go on with the version that they began with. So a reload is enough to get the newer one.

import { serviceWorkers } from './service-workers.ts';

/** How long a page waits for it before it begins as it is, ms: far longer than it takes. */
const WAIT_MS = 2000;

/** True: the page is being loaded anew, and is not to begin. */
export async function takeNewer(): Promise<boolean> {
  const workers = serviceWorkers();
  // Without a worker the page came from the network, and is as new as can be.
  if (workers === null || workers.controller === null) return false;
  const ours = await workers.getRegistration().catch(() => undefined);
  // A host may have a worker of its own above our folder.
  if (ours?.scope !== new URL('./', location.href).href || ours.waiting === null) return false;
  const taken = await takenBy(ours.waiting, workers);
  if (taken) location.reload();
  return taken;
}

const takenBy = (newer: ServiceWorker, workers: ServiceWorkerContainer): Promise<boolean> =>
  new Promise((settle) => {
    const { port1, port2 } = new MessageChannel();
    workers.addEventListener('controllerchange', () => settle(true), { once: true });
    port1.onmessage = ({ data }) => {
      if (data === false) settle(false);
    };
    newer.postMessage('take-over', [port2]);
    setTimeout(settle, WAIT_MS, false);
  });
