// A web host, a browser's kept files and the service workers that run on them, as far as our worker asks of them.

import { transformWithOxc } from 'vite';
import { ROOT, readText } from './files.ts';

export const SCOPE = 'https://host.example/app/';

type Files = Map<string, string>;

/** What one browser keeps, by the names of shelves. A shelf that was deleted is gone for whoever opens it again. */
export class KeptFiles {
  readonly shelves = new Map<string, Files>();
  /** Set: what the browser says whenever it is asked for a kept file. */
  broken: Error | null = null;
  readonly #host: WebHost;

  constructor(host: WebHost) {
    this.#host = host;
  }

  has = async (name: string): Promise<boolean> => this.shelves.has(name);
  keys = async (): Promise<string[]> => [...this.shelves.keys()];
  delete = async (name: string): Promise<boolean> => this.shelves.delete(name);
  match = async (name: string, { cacheName }: { cacheName: string }): Promise<Response | undefined> => {
    if (this.broken !== null) throw this.broken;
    return found(this.shelves.get(cacheName), name);
  };
  open = async (name: string): Promise<object> => {
    if (this.broken !== null) throw this.broken;
    const shelf = this.shelves.get(name) ?? new Map<string, string>();
    this.shelves.set(name, shelf);
    const addAll = async (asked: readonly Asked[]): Promise<void> => {
      const texts = asked.map(({ url }) => [url, this.#host.get(url)] as const);
      for (const [url, text] of texts) shelf.set(url, text);
    };
    return { addAll, add: (one: Asked) => addAll([one]), match: async (one: string) => found(shelf, one) };
  };
}

const found = (shelf: Files | undefined, name: string): Response | undefined => {
  const text = shelf?.get(new URL(name, SCOPE).href);
  return text === undefined ? undefined : new Response(text);
};

/** Throws for what it has not, and for everything while it is `gone` or the browser has no room. */
export class WebHost {
  readonly files: Files = new Map();
  gone: Error | null = null;

  /** False: it answers, and has it not. */
  has = (url: string): boolean => this.gone !== null || this.files.has(new URL(url).pathname.slice('/app/'.length));

  get(url: string): string {
    const text = this.files.get(new URL(url).pathname.slice('/app/'.length));
    if (this.gone !== null || text === undefined) throw this.gone ?? new TypeError(`no ${url}`);
    return text;
  }
}

class Asked {
  readonly url: string;
  constructor(name: string) {
    this.url = new URL(name, SCOPE).href;
  }
}

class Page {
  readonly id: string;
  readonly url: string;
  constructor(id: string, url: string) {
    this.id = id;
    this.url = url;
  }
}

export interface RunningWorker {
  install(): Promise<void>;
  activate(): Promise<void>;
  answer(url: string): Promise<string>;
  /** `pages`: the addresses that are open, the asking one first. */
  isAlone(pages: readonly string[]): Promise<boolean>;
}

const destinationOf = (url: string): string => (url.endsWith('.js') ? 'script' : url.endsWith('.css') ? 'style' : '');

/** Our worker as a version of the app has it. */
export async function workerOf(version: string, host: WebHost, kept: KeptFiles): Promise<RunningWorker> {
  const source = 'apps/web/src/offline/service-worker.ts';
  const { code } = await transformWithOxc(readText(ROOT, source), source, { sourcemap: false });
  const open: { pages: readonly Page[] } = { pages: [] };
  const self: Record<string, unknown> = {
    registration: { scope: SCOPE },
    clients: { claim: async () => undefined, matchAll: async () => open.pages },
    skipWaiting: async () => undefined,
  };
  const files = [...host.files.keys()].filter((name) => name !== '');
  const fromHost = async ({ url }: { url: string }): Promise<Response> =>
    host.has(url) ? new Response(host.get(url)) : new Response('', { status: 404 });
  new Function('self', 'caches', 'fetch', 'Request', 'Client', 'VERSION', 'FILES', code)(
    self,
    kept,
    fromHost,
    Asked,
    Page,
    version,
    files,
  );
  const tell = (name: string, event: object): void => (self[name] as (event: object) => void)(event);
  const until = (name: string): Promise<void> =>
    new Promise((done, fail) => tell(name, { waitUntil: (work: Promise<void>) => work.then(done, fail) }));
  return {
    install: () => until('oninstall'),
    activate: () => until('onactivate'),
    answer: (url) =>
      new Promise((done, fail) => {
        const respondWith = (answer: Promise<Response>): void => void answer.then((one) => one.text()).then(done, fail);
        tell('onfetch', {
          request: { url, method: 'GET', mode: 'navigate', destination: destinationOf(url) },
          respondWith,
        });
      }),
    isAlone: (pages) =>
      new Promise((done) => {
        open.pages = pages.map((url, k) => new Page(String(k), url));
        tell('onmessage', { data: 'alone?', source: open.pages[0], ports: [{ postMessage: done }] });
      }),
  };
}
