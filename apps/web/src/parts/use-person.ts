// Who measures, judges or decides: a role, typed once and offered again in the same hands until the browser's tab is
// closed: what a pupil has seen is not signed "Teacher". A measurer or a judge who types nothing goes by that name.

import { useState } from 'preact/hooks';
import { useScreenWords } from '../app/use-words.ts';
import type { Role } from '../store/device.ts';
import { useSession } from '../store/use-session.ts';

export interface Person {
  readonly typed: string;
  readonly type: (typed: string) => void;
}

const keyOf = (role: Role): string => `cairnmark.person.${role}`;

export function usePerson(): Person {
  const { say } = useScreenWords();
  const role = useSession((session) => session.role);
  const [here, setHere] = useState<{ readonly role: Role; readonly name: string } | null>(null);
  const typed = here?.role === role ? here.name : recalled(role);
  return {
    typed: typed ?? (role === 'measurer' || role === 'judge' ? say(`role.${role}`) : ''),
    type: (name) => {
      setHere({ role, name });
      try {
        sessionStorage.setItem(keyOf(role), name);
      } catch {
        // A browser that keeps nothing asks again.
      }
    },
  };
}

/** null: nothing was typed. */
function recalled(role: Role): string | null {
  try {
    return sessionStorage.getItem(keyOf(role));
  } catch {
    return null;
  }
}
