// Keeps the whole app on the device, so that it starts and goes on without a network. It stands beside the page as a script
// of its own; the build writes VERSION and FILES in front of it (apps/web/vite/offline.ts).
//
// One version is one shelf. A page is answered from the shelf of the worker that it began with, so a screen that it opens
// late is still there when a newer version has been put on the web host. The newer one fills its own shelf and waits until
// no page is open any more, or until the only page is just beginning and asks for it (take-newer.ts). Then the old shelf goes.

/// <reference lib="webworker" />

declare const self: ServiceWorkerGlobalScope;
/** Tells the files of one build from those of every other. */
declare const VERSION: string;
/** Addresses beside the page, without the page itself. */
declare const FILES: readonly string[];

/**
 * Loads the page anew, once in a visit: on a busy device this version may take over between the page of the one before and its
 * parts, which are gone then, and the page would stay empty. The page that comes is ours.
 */
const ANEW = `const key = ${JSON.stringify(`cairnmark anew ${VERSION}`)};
if (sessionStorage.getItem(key) === null) {
  sessionStorage.setItem(key, 'yes');
  location.reload();
}`;

/** Relative to the scope. Not by a file's name: some hosts send that on to the folder, and what was sent on is no page. */
const PAGE = './';
/** Several copies of the app may lie on one host, in folders of their own. */
const SHELVES = `cairnmark ${self.registration.scope} `;
const SHELF = `${SHELVES}${VERSION}`;

self.oninstall = (event) => event.waitUntil(fill());
self.onactivate = (event) => event.waitUntil(begin());
self.onfetch = (event) => {
  const name = nameOf(event.request);
  if (name !== null) event.respondWith(kept(name, event.request));
  else if (isPart(event.request)) event.respondWith(fromHost(event.request));
};
self.onmessage = ({ data, source, ports: [port] }) => {
  if (source instanceof Client) void answer(data, source.id).then((yes) => port?.postMessage(yes));
};

/**
 * All or nothing: a shelf with a gap would be found out when there is no network. A host that went back to the version that
 * is at work has it filled once more; what fails then leaves it as it was.
 */
async function fill(): Promise<void> {
  const isAtWork = await caches.has(SHELF);
  const shelf = await caches.open(SHELF);
  try {
    // What has its version in its name may come from the browser's memory of the network; the rest may be old there.
    await shelf.addAll(
      FILES.map((name) => new Request(name, { cache: isNamedByContent(name) ? 'default' : 'reload' })),
    );
    await shelf.add(new Request(PAGE, { cache: 'reload' }));
    const page = (await (await shelf.match(PAGE))?.text()) ?? '';
    const named = [...page.matchAll(/"\.\/(assets\/[^"]+)"/g)].map(([, name = '']) => name);
    if (!named.every((name) => FILES.includes(name)))
      throw new RangeError('the page on the host is of another version');
  } catch (error) {
    if (!isAtWork) await caches.delete(SHELF);
    throw error;
  }
}

const isNamedByContent = (name: string): boolean => name.startsWith('assets/');

/** No page of an older version is open now. A page that came before there was any worker is served from here on, too. */
async function begin(): Promise<void> {
  // Names come in the order in which the shelves were put up: behind ours is that of a still newer version, half filled maybe.
  const shelves = (await caches.keys()).filter((name) => name.startsWith(SHELVES));
  const older = shelves.slice(0, Math.max(0, shelves.indexOf(SHELF)));
  await Promise.all(older.map((name) => caches.delete(name)));
  await self.clients.claim();
}

/** What of ours is asked for; null for all else that a host may hold in the same folder. */
function nameOf(request: Request): string | null {
  const { origin, pathname } = new URL(request.url);
  const scope = new URL(self.registration.scope);
  if (request.method !== 'GET' || origin !== scope.origin || !pathname.startsWith(scope.pathname)) return null;
  const name = pathname.slice(scope.pathname.length);
  if (name === '' || name === 'index.html') return request.mode === 'navigate' ? PAGE : null;
  return FILES.includes(name) ? name : null;
}

/** What only a version of the app asks for, ours or another. */
function isPart({ url, method, destination }: Request): boolean {
  const within = url.startsWith(`${self.registration.scope}assets/`);
  return within && method === 'GET' && (destination === 'script' || destination === 'style');
}

/** A part that neither the shelf nor the host has any more is of a version that went while its page was beginning. */
async function fromHost(request: Request): Promise<Response> {
  const answer = await fetch(request);
  if (answer.status !== 404 || !isPart(request)) return answer;
  const [text, type] = request.destination === 'script' ? [ANEW, 'text/javascript'] : ['', 'text/css'];
  return new Response(text, { headers: { 'content-type': type } });
}

/** From the network only when a browser short of room has thrown it away, or cannot get at it. */
async function kept(name: string, request: Request): Promise<Response> {
  const there = await caches.match(name, { cacheName: SHELF }).catch(() => undefined);
  return there ?? fromHost(request);
}

/** To a page that is just beginning: whether it is the only one open; and this version goes on at once when it asks for that. */
async function answer(question: unknown, asking: string): Promise<boolean> {
  // Of all that the host has, in other folders too.
  const open = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const pages = open.filter(({ url }) => url.startsWith(self.registration.scope));
  const alone = pages.every(({ id }) => id === asking);
  if (alone && question === 'take-over') await self.skipWaiting();
  return alone;
}
