// A button that is gone once it was pressed leaves the focus nowhere: it then goes to the steps, so that Tab goes on from there.

import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

export function useFocusNear<T extends HTMLElement>(): RefObject<T> {
  const near = useRef<T>(null);
  const had = useRef(false);
  useLayoutEffect(() => {
    const { activeElement, body } = document;
    if (had.current && activeElement === body) near.current?.focus({ preventScroll: true });
    had.current = near.current?.contains(document.activeElement) ?? false;
  });
  return near;
}
