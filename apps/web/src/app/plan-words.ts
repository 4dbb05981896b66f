// The words of the screens on which a class is planned and run.

import type { PlanWords } from '@cairnmark/words';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

export const PlanContext = createContext<PlanWords | null>(null);

export function usePlanWords(): PlanWords {
  const words = useContext(PlanContext);
  if (words === null) throw new RangeError('no words of the planning screens above this part');
  return words;
}
