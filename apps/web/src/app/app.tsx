// The screens and their addresses. Addresses stand behind a #, so that any web host and a USB stick serve the app.

import { lazy, Suspense } from 'preact/compat';
import { useEffect } from 'preact/hooks';
import { Route, Router, Switch, useLocation } from 'wouter-preact';
import { useHashLocation } from 'wouter-preact/use-hash-location';
import { Start } from '../screens/start/start.tsx';
import { useSession } from '../store/use-session.ts';
import { Frame } from './frame.tsx';
import { useKeptClass } from './use-kept-class.ts';
import { useScreenWords } from './use-words.ts';

const Build = lazy(() => import('../screens/build/build.tsx'));
const ScoreCard = lazy(() => import('../screens/score/score-card.tsx'));
const Board = lazy(() => import('../screens/board/board.tsx'));

export function App() {
  const language = useSession((session) => session.language);
  useEffect(() => {
    document.documentElement.lang = language;
  }, [language]);
  const looking = useKeptClass();
  if (looking) return null;
  return (
    <Router hook={useHashLocation}>
      <Frame>
        <Screen />
      </Frame>
    </Router>
  );
}

/** The key parts the screens: without it one that was left stays, hidden and out of date, until the next has arrived. */
function Screen() {
  const words = useScreenWords();
  const [location] = useLocation();
  return (
    <Suspense key={location} fallback={<p className="page">{words.say('frame.loading')}</p>}>
      <Switch>
        <Route path="/build" component={Build} />
        <Route path="/score" component={ScoreCard} />
        <Route path="/board" component={Board} />
        <Route component={Start} />
      </Switch>
    </Suspense>
  );
}
