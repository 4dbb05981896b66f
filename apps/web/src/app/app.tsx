// What is on the page: the frame, and the screen of the address. Addresses stand behind a #, so that any web host and a USB
// stick serve the app.

import { useEffect } from 'preact/hooks';
import { Redirect, Router, useLocation } from 'wouter-preact';
import { useHashLocation } from 'wouter-preact/use-hash-location';
import { Start } from '../screens/start/start.tsx';
import { useSession } from '../store/use-session.ts';
import { Arriving } from './arriving.tsx';
import { Frame } from './frame.tsx';
import { Lost } from './lost.tsx';
import { isElsewhere, tabsOf } from './roles.ts';
import { fetchAhead, SCREENS } from './screens.ts';
import { Speaking } from './speaking.tsx';
import { useKeptClass } from './use-kept-class.ts';
import { useScreenWords, useSpoken } from './use-words.ts';

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

function Screen() {
  const { builds, again } = useSpoken();
  const [location] = useLocation();
  const classOpen = useSession((session) => session.record !== null);
  const language = useSession((session) => session.language);
  useEffect(() => {
    if (classOpen) fetchAhead(language);
  }, [classOpen, language]);
  const role = useSession((session) => session.role);
  const load = SCREENS[location];
  if (load === undefined) return <Start />;
  if (classOpen && isElsewhere(role, location)) return <Redirect to={tabsOf(role)[0]} replace />;
  if (classOpen && builds === null) return <Waiting again={again} />;
  // The key parts the screens: without it one that was left stays, out of date, until the next has arrived.
  return (
    <Arriving key={location} ask={load}>
      {(Part) => <Part />}
    </Arriving>
  );
}

/** `again`: it did not come, and can be asked for once more. */
function Waiting({ again }: { readonly again: (() => void) | null }) {
  const words = useScreenWords();
  return again === null ? <p className="page">{words.say('frame.loading')}</p> : <Lost again={again} />;
}
