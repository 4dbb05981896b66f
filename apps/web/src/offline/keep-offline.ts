// Has the app kept on the device, where the browser allows it: on this machine or over https. Elsewhere (plain http in a
// school network, a file on a stick) it runs without.

import { serviceWorkers } from './service-workers.ts';

/** Beside the page, after the build. */
const WORKER = './service-worker.js';

/** Once the first screen stands: what is fetched for later does not hold it up. */
export function keepOffline(): void {
  if (!import.meta.env.PROD || import.meta.env.MODE === 'one-file') return;
  const register = (): void => {
    // Refused or out of reach: the app runs from the network as before.
    serviceWorkers()
      ?.register(WORKER, { updateViaCache: 'none' })
      .catch(() => undefined);
  };
  if (document.readyState === 'complete') register();
  else addEventListener('load', register, { once: true });
}
