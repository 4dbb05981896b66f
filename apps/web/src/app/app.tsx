// The screens and their addresses. Addresses stand behind a #, so that any web host and a USB stick serve the app.

import { lazy, Suspense } from 'preact/compat';
import { Route, Router, Switch, useLocation } from 'wouter-preact';
import { useHashLocation } from 'wouter-preact/use-hash-location';
import { Start } from '../screens/start/start.tsx';
import { useSession } from '../store/use-session.ts';
import { Frame } from './frame.tsx';
import { Speaking } from './speaking.tsx';
import { useKeptClass } from './use-kept-class.ts';
import { useSpoken } from './use-words.ts';

const Build = lazy(() => import('../screens/build/build.tsx'));
const ScoreCard = lazy(() => import('../screens/score/score-card.tsx'));
const Board = lazy(() => import('../screens/board/board.tsx'));

export function App() {
  const looking = useKeptClass();
  if (looking) return null;
  return (
    <Speaking>
      <Router hook={useHashLocation}>
        <Frame>
          <Screen />
        </Frame>
      </Router>
    </Speaking>
  );
}

/** The key parts the screens: without it one that was left stays, hidden and out of date, until the next has arrived. */
function Screen() {
  const { screens, builds } = useSpoken();
  const [location] = useLocation();
  const classOpen = useSession((session) => session.record !== null);
  const loading = <p className="page">{screens.say('frame.loading')}</p>;
  if (classOpen && builds === null) return loading;
  return (
    <Suspense key={location} fallback={loading}>
      <Switch>
        <Route path="/build" component={Build} />
        <Route path="/score" component={ScoreCard} />
        <Route path="/board" component={Board} />
        <Route component={Start} />
      </Switch>
    </Suspense>
  );
}
