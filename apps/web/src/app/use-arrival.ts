// Something that comes over the network when it is first needed: on its way, here, or not to be had now.

import { useCallback, useLayoutEffect, useState } from 'preact/hooks';

export interface Arrival<T> {
  /** null: not here yet. What is here stays until the next has come, and when the next is lost. */
  readonly what: T | null;
  /** The last that was asked for did not come. */
  readonly lost: boolean;
  again(): void;
}

/** Asks anew whenever `ask` is another function; before the page is drawn, so that what came once is shown at once. */
export function useArrival<T>(ask: () => Promise<T>): Arrival<T> {
  const [state, setState] = useState<Pick<Arrival<T>, 'what' | 'lost'>>({ what: null, lost: false });
  const [turn, setTurn] = useState(0);
  useLayoutEffect(() => {
    let current = true;
    ask().then(
      (what) => current && setState({ what, lost: false }),
      () => current && setState(({ what }) => ({ what, lost: true })),
    );
    return () => {
      current = false;
    };
  }, [ask, turn]);
  const again = useCallback(() => {
    setState(({ what }) => ({ what, lost: false }));
    setTurn((before) => before + 1);
  }, []);
  return { ...state, again };
}
