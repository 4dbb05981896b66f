// The layouts of the try at work, with undo and redo; each try has its own history. A height from a photo goes with the layout that
// was traced on it.

import type { History } from '@cairnmark/editing';
import { begin, did, redo, undo } from '@cairnmark/editing';
import type { Attempt } from '@cairnmark/engine';
import type { Layout } from '@cairnmark/geometry';
import { changeAttempt, withLayout } from './class-changes.ts';
import type { Session } from './session.ts';
import { whereAt } from './where-at.ts';

export interface LayoutHistory {
  /** Undo and redo of layouts, by attempt. */
  readonly histories: Readonly<Record<string, History<Laid>>>;
  /**
   * Another layout for the try at work; what was confirmed before has to be seen again. `photoHeightMm`: that of the photos it
   * was traced on, null when they tell none; absent: the one there was stays, as where a piece is set right, until another
   * build is laid in its place.
   */
  layOut(layout: Layout, photoHeightMm?: number | null): void;
  undo(): void;
  redo(): void;
}

export interface Laid {
  readonly layout: Layout;
  readonly photoHeightMm: number | null;
}

export function layoutHistory(set: (change: Partial<Session>) => void, get: () => Session): LayoutHistory {
  /** The history of the try at work, changed, and with it the layout. */
  const step = (how: (history: History<Laid>, now: Laid) => History<Laid>): void => {
    const attempt = whereAt(get().record, get().place)?.attempt;
    if (attempt === null || attempt === undefined) return;
    const now = { layout: attempt.layout, photoHeightMm: attempt.observed.photoHeightMm ?? null };
    const history = how(get().histories[attempt.id] ?? begin(now), now);
    const { layout, photoHeightMm } = history.now;
    if (layout === now.layout && photoHeightMm === now.photoHeightMm) return;
    set({ histories: { ...get().histories, [attempt.id]: history } });
    get().change(changeAttempt(attempt.id, (before) => withPhotoHeight(photoHeightMm, withLayout(layout)(before))));
  };
  return {
    histories: {},
    layOut: (layout, photoHeightMm) => {
      if (get().place?.attempt === null) get().startTry();
      step((history, now) =>
        did(history, { layout, photoHeightMm: photoHeightMm === undefined ? heightFor(layout, now) : photoHeightMm }),
      );
    },
    undo: () => step(undo),
    redo: () => step(redo),
  };
}

/** Once nothing of a traced build is left, its photos say nothing of the one that is laid now. */
const heightFor = (layout: Layout, before: Laid): number | null =>
  layout.kind === 'laid-out' && isTraced(before.layout) && !isTraced(layout) ? null : before.photoHeightMm;

const isTraced = (layout: Layout): boolean =>
  layout.kind === 'traced' || (layout.kind === 'laid-out' && layout.traced === true);

/** null: there is none. */
function withPhotoHeight(photoHeightMm: number | null, attempt: Attempt): Attempt {
  const { photoHeightMm: _, ...observed } = attempt.observed;
  return { ...attempt, observed: photoHeightMm === null ? observed : { ...observed, photoHeightMm } };
}
