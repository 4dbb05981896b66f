// The layouts of the try at work, with undo and redo; each try has its own history.

import type { History } from '@cairnmark/editing';
import { begin, did, redo, undo } from '@cairnmark/editing';
import type { Layout } from '@cairnmark/geometry';
import { changeAttempt, withLayout } from './class-changes.ts';
import type { Session } from './session.ts';
import { whereAt } from './where-at.ts';

export interface LayoutHistory {
  /** Undo and redo of layouts, by attempt. */
  readonly histories: Readonly<Record<string, History<Layout>>>;
  /** Another layout for the try at work; what was confirmed before has to be seen again. */
  layOut(layout: Layout): void;
  undo(): void;
  redo(): void;
}

export function layoutHistory(set: (change: Partial<Session>) => void, get: () => Session): LayoutHistory {
  /** The history of the try at work, changed, and with it the layout. */
  const step = (how: (history: History<Layout>) => History<Layout>): void => {
    const attempt = whereAt(get().record, get().place)?.attempt;
    if (attempt === null || attempt === undefined) return;
    const history = how(get().histories[attempt.id] ?? begin(attempt.layout));
    if (history.now === attempt.layout) return;
    set({ histories: { ...get().histories, [attempt.id]: history } });
    get().change(changeAttempt(attempt.id, withLayout(history.now)));
  };
  return {
    histories: {},
    layOut: (layout) => {
      if (get().place?.attempt === null) get().startTry();
      step((history) => did(history, layout));
    },
    undo: () => step(undo),
    redo: () => step(redo),
  };
}
