// Whether whoever holds the device may do something.

import { useSession } from '../store/use-session.ts';
import type { Act } from './roles.ts';
import { may } from './roles.ts';

export const useMay = (act: Act): boolean =>
  may(
    useSession((session) => session.role),
    act,
  );
