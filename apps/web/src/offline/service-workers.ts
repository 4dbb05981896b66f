// The browser's service workers. None over plain http in a network, and a page that is framed in a sandbox may not even ask.

export function serviceWorkers(): ServiceWorkerContainer | null {
  try {
    return 'serviceWorker' in navigator ? navigator.serviceWorker : null;
  } catch {
    return null;
  }
}
