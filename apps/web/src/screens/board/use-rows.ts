// The rows of a board page by page, with places hidden or shown one by one as this device was told.

import type { ClassRecord } from '@cairnmark/engine';
import { useCallback, useMemo, useState } from 'preact/hooks';
import { useSession } from '../../store/use-session.ts';
import type { Row } from './arrangement.ts';
import { arranged } from './arrangement.ts';
import { isDense } from './fit.ts';
import { pageWith } from './pages.ts';
import { isRevealed, placesToReveal, stepped } from './reveal.ts';
import { useFit } from './use-fit.ts';

export interface Rows<T> {
  readonly pages: readonly (readonly T[])[];
  /** Counted from 0. */
  readonly page: number;
  /** The rows of this page stand close. */
  readonly dense: boolean;
  readonly placesHidden: boolean;
  /** Places shown by now, of how many; null: all at once. */
  readonly reveal: { readonly done: number; readonly of: number } | null;
  /** Every row is shown, with its place. */
  readonly isWhole: boolean;
  isShown(row: T): boolean;
  turnTo(page: number): void;
  /** Shows one place more, or hides the one shown last; answers with the place that was shown. */
  step(by: 1 | -1): number | null;
}

/** `shown`: the id under which the device keeps how far these rows are revealed. */
export function useRows<T extends Row>(rows: readonly T[], { groups }: ClassRecord, shown: string): Rows<T> {
  const { placesHidden, reveal } = useSession((session) => session.board);
  const showOnBoard = useSession((session) => session.showOnBoard);
  const fit = useFit();
  const [turned, setTurned] = useState<number | null>(null);
  const pages = useMemo(
    () =>
      arranged(
        rows,
        groups.map(({ id }) => id),
        placesHidden,
        fit.most,
      ),
    [rows, groups, placesHidden, fit.most],
  );
  const places = useMemo(() => placesToReveal(rows), [rows]);
  const done = reveal === null ? null : Math.min(reveal[shown] ?? 0, places.length);
  // A page that was not turned by hand is that of the place shown last.
  const newest = done === null ? null : (places[Math.max(0, done - 1)] ?? null);
  const page = turned ?? (newest === null ? 0 : pageWith(pages, ({ place }) => place === newest));
  const step = useCallback(
    (by: 1 | -1): number | null => {
      if (done === null) return null;
      const next = stepped(done, by, places);
      setTurned(null);
      showOnBoard({ reveal: { ...reveal, [shown]: next } });
      return next > done ? (places[next - 1] ?? null) : null;
    },
    [done, places, reveal, shown, showOnBoard],
  );
  const current = Math.min(page, pages.length - 1);
  return {
    pages,
    page: current,
    dense: isDense(pages[current]?.length ?? 0, fit),
    placesHidden,
    reveal: done === null ? null : { done, of: places.length },
    isWhole: !placesHidden && (done === null || done === places.length),
    isShown: (row) => isRevealed(row, places, done),
    turnTo: setTurned,
    step,
  };
}
