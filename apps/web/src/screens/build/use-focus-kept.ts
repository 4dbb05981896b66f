// A button that takes its own piece off is gone with it: the focus then goes to the list, so that the keys go on.

import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

export function useFocusKept(count: number): RefObject<HTMLElement> {
  const list = useRef<HTMLElement>(null);
  const before = useRef(count);
  useLayoutEffect(() => {
    const isLess = count < before.current;
    before.current = count;
    if (isLess && document.activeElement === document.body) list.current?.focus();
  }, [count]);
  return list;
}
