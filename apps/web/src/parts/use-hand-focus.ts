// Hands the focus on when what had it is gone, or when something new is there to be filled in.

import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

interface HandFocus<E extends HTMLElement> {
  readonly area: RefObject<E>;
  /** Once the change is on the page. */
  readonly hand: (find: (area: E) => HTMLElement | null | undefined) => void;
}

export function useHandFocus<E extends HTMLElement>(): HandFocus<E> {
  const area = useRef<E>(null);
  const wanted = useRef<((area: E) => HTMLElement | null | undefined) | null>(null);
  useLayoutEffect(() => {
    const find = wanted.current;
    wanted.current = null;
    const next = find === null || area.current === null ? null : find(area.current);
    next?.focus();
    // What stands in a new field is there to be typed over.
    if (next instanceof HTMLInputElement && next.type === 'text') next.select();
  });
  return {
    area,
    hand: (find) => {
      wanted.current = find;
    },
  };
}
