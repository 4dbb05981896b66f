// Puts the app on the page: storage, session and worker are made here and handed down.

import { render } from 'preact';
import { App } from './app/app.tsx';
import './look/base.css';
import { browserStorage } from './store/browser-storage.ts';
import { createSession } from './store/session.ts';
import { SessionContext } from './store/use-session.ts';
import { StorageContext } from './store/use-storage.ts';
import { engineClient } from './workers/engine-client.ts';
import { remembering } from './workers/remembering.ts';
import { EngineContext } from './workers/use-engine.ts';

const storage = browserStorage();
const session = createSession(storage, navigator.languages);
const engine = remembering(
  engineClient(
    () => new Worker(new URL('./workers/engine-worker.ts', import.meta.url), { type: 'module' }),
    () => performance.now(),
  ),
);

const root = document.getElementById('app');
if (root === null) throw new RangeError('the page has no place for the app');
render(
  <StorageContext value={storage}>
    <SessionContext value={session}>
      <EngineContext value={engine}>
        <App />
      </EngineContext>
    </SessionContext>
  </StorageContext>,
  root,
);
