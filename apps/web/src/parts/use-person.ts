// Who measures, judges or decides: a role, typed once and offered again until the browser's tab is closed. A measurer or a
// judge who types nothing goes by that name.

import { useState } from 'preact/hooks';
import { useScreenWords } from '../app/use-words.ts';
import { useSession } from '../store/use-session.ts';

export interface Person {
  readonly typed: string;
  readonly type: (typed: string) => void;
}

const KEY = 'cairnmark.person';

export function usePerson(): Person {
  const { say } = useScreenWords();
  const role = useSession((session) => session.role);
  const [typed, setTyped] = useState(recalled);
  return {
    typed: typed ?? (role === 'measurer' || role === 'judge' ? say(`role.${role}`) : ''),
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

/** null: nothing was typed. */
function recalled(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}
