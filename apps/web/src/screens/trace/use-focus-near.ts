// A button that is gone once it was pressed leaves the focus nowhere: it then goes to the steps, so that Tab goes on from there.

import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

export function useFocusNear<T extends HTMLElement>(): RefObject<T> {
  const near = useRef<T>(null);
  // Asked before anything on the page changes: afterwards the button that was pressed is gone.
  const had = near.current?.contains(document.activeElement) ?? false;
  useLayoutEffect(() => {
    if (had && document.activeElement === document.body) near.current?.focus({ preventScroll: true });
  });
  return near;
}
