// Puts the app on the page: storage, session and worker are made here and handed down. Not when a newer version lies ready
// and takes over: then the page is loaded anew.

import { render } from 'preact';
import { App } from './app/app.tsx';
import './look/base.css';
import { keepOffline } from './offline/keep-offline.ts';
import { takeNewer } from './offline/take-newer.ts';
import { browserStorage } from './store/browser-storage.ts';
import { createSession } from './store/session.ts';
import { SessionContext } from './store/use-session.ts';
import { StorageContext } from './store/use-storage.ts';
import EngineWorker from './workers/engine-worker.ts?worker';
import type { Questions } from './workers/questions.ts';
import { remembering } from './workers/remembering.ts';
import { EngineContext } from './workers/use-engine.ts';
import { LONG_MS, workerClient } from './workers/worker-client.ts';

void takeNewer().then((taken) => {
  if (taken) return;
  begin();
  keepOffline();
});

function begin(): void {
  const storage = browserStorage();
  const session = createSession(storage, navigator.languages);
  const engine = remembering(
    workerClient<Questions>(
      () => new EngineWorker(),
      () => performance.now(),
      LONG_MS,
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
}
