// Who measures, judges or decides: a role, typed once and offered again until the browser's tab is closed.

import { useState } from 'preact/hooks';

export interface Person {
  readonly typed: string;
  readonly type: (typed: string) => void;
}

const KEY = 'cairnmark.person';

export function usePerson(): Person {
  const [typed, setTyped] = useState(recalled);
  return {
    typed,
    type: (name) => {
      setTyped(name);
      try {
        sessionStorage.setItem(KEY, name);
      } catch {
        // A browser that keeps nothing asks again.
      }
    },
  };
}

function recalled(): string {
  try {
    return sessionStorage.getItem(KEY) ?? '';
  } catch {
    return '';
  }
}
