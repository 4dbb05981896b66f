// What stands round every screen: the name, the tabs on the ruler bar, who is at work, and whether all is kept.

import type { ScreenKey } from '@cairnmark/words';
import type { ComponentChildren } from 'preact';
import { Link, useLocation } from 'wouter-preact';
import { useSession } from '../store/use-session.ts';
import type { TabPath } from './roles.ts';
import { tabsOf } from './roles.ts';
import { Saved } from './saved.tsx';
import { Settings } from './settings.tsx';
import { useScreenWords } from './use-words.ts';
import { Who } from './who.tsx';

const TEXT = {
  '/class': 'tab.class',
  '/challenge': 'tab.challenge',
  '/kit': 'tab.kit',
  '/print': 'tab.print',
  '/supply': 'tab.supply',
  '/build': 'tab.build',
  '/record': 'tab.record',
  '/score': 'tab.score',
  '/board': 'tab.board',
  '/fair': 'tab.fair',
} as const satisfies Readonly<Record<TabPath, ScreenKey>>;

export function Frame({ children }: { readonly children: ComponentChildren }) {
  const words = useScreenWords();
  const [location] = useLocation();
  const open = useSession((session) => session.record !== null);
  const role = useSession((session) => session.role);
  const tabs = open && location in TEXT;
  return (
    <>
      <button type="button" className="skip" onClick={focusContent}>
        {words.say('frame.skip')}
      </button>
      <header className="top">
        <Link className="brand" href="/">
          <Cairn />
          {words.say('frame.brand')}
        </Link>
        {tabs ? (
          <nav className="tabs" aria-label={words.say('frame.tabs')}>
            {tabsOf(role).map((path) => (
              <Link key={path} href={path} aria-current={location === path ? 'page' : undefined}>
                {words.say(TEXT[path])}
              </Link>
            ))}
          </nav>
        ) : (
          <span />
        )}
        <div className="who">
          {tabs && <Who />}
          {tabs && <Saved />}
          <Settings />
        </div>
      </header>
      <div className="strip" aria-hidden="true" />
      <main id="content" tabIndex={-1}>
        {children}
      </main>
    </>
  );
}

/** Addresses behind the # belong to the screens, so skipping moves the focus itself. */
function focusContent(): void {
  document.getElementById('content')?.focus();
}

const Cairn = () => (
  <svg viewBox="0 0 26 26" width="26" height="26" aria-hidden="true">
    <path d="M3 23h20" stroke="currentColor" strokeWidth="2.5" strokeLinecap="round" />
    <path d="M6 20.5v-4h14v4zM8.5 14.5v-4h9v4zM10.5 8.5v-4h5v4z" fill="currentColor" />
  </svg>
);
