// The words of the door "Trace it".

import type { TraceWords } from '@cairnmark/words';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

export const TraceContext = createContext<TraceWords | null>(null);

export function useTraceWords(): TraceWords {
  const words = useContext(TraceContext);
  if (words === null) throw new RangeError('no words of tracing above this part');
  return words;
}
