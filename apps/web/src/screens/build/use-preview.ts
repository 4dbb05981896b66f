// The build as it would be, while a piece is dragged. Told at most a dozen times a second: numbers that change faster
// cannot be read, and the finger must not wait for them.

import type { Pieces } from '@cairnmark/editing';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';

const EVERY_MS = 80;

export function usePreview(): readonly [Pieces | null, (pieces: Pieces | null) => void] {
  const [preview, setPreview] = useState<Pieces | null>(null);
  const next = useRef<Pieces | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const tell = useMemo(
    () =>
      (pieces: Pieces | null): void => {
        next.current = pieces;
        if (pieces === null) {
          if (timer.current !== null) clearTimeout(timer.current);
          timer.current = null;
          setPreview(null);
        } else {
          timer.current ??= setTimeout(() => {
            timer.current = null;
            setPreview(next.current);
          }, EVERY_MS);
        }
      },
    [],
  );
  useEffect(
    () => () => {
      if (timer.current !== null) clearTimeout(timer.current);
    },
    [],
  );
  return [preview, tell];
}
