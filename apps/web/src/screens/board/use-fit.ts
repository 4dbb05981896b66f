// What fits into the window as it is now.

import { useEffect, useState } from 'preact/hooks';
import type { Fit } from './fit.ts';
import { fitOf } from './fit.ts';

export function useFit(): Fit {
  const [fit, setFit] = useState(now);
  useEffect(() => {
    const look = (): void =>
      setFit((before) => {
        const after = now();
        return after.most === before.most && after.shared === before.shared ? before : after;
      });
    window.addEventListener('resize', look);
    return () => window.removeEventListener('resize', look);
  }, []);
  return fit;
}

const now = (): Fit => fitOf(window.innerWidth, window.innerHeight);
