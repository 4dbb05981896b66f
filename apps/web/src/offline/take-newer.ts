// A page that begins while a newer version lies ready lets it take over before anything stands on the screen, unless other
// pages are open: those go on with the version that they began with. So a reload is enough to get the newer one.

/** How long a page waits for it before it begins as it is, ms: far longer than it takes. */
const WAIT_MS = 2000;

/** True: the page is being loaded anew, and is not to begin. */
export async function takeNewer(): Promise<boolean> {
  const workers = 'serviceWorker' in navigator ? navigator.serviceWorker : null;
  // Without a worker the page came from the network, and is as new as can be.
  if (workers === null || workers.controller === null) return false;
  const waiting = (await workers.getRegistration().catch(() => undefined))?.waiting ?? null;
  if (waiting === null) return false;
  const taken = await new Promise<boolean>((settle) => {
    const { port1, port2 } = new MessageChannel();
    workers.addEventListener('controllerchange', () => settle(true), { once: true });
    port1.onmessage = ({ data }) => {
      if (data !== true) settle(false);
    };
    waiting.postMessage('take-over', [port2]);
    setTimeout(settle, WAIT_MS, false);
  });
  if (taken) location.reload();
  return taken;
}
