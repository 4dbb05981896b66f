// Puts together what the parts of the Kit screen share, and remembers the way back from the last change.

import type { KindOfPiece } from '@cairnmark/engine';
import type { FileIssue } from '@cairnmark/formats';
import type { Solid, SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import { useMemo, useRef, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useBuildWords } from '../../app/use-build-words.ts';
import { kitScale } from '../../drawing/kit-scale.ts';
import { useEdit } from '../../store/edit-class.ts';
import { kitUse } from '../../store/kit-scope.ts';
import { backFrom } from '../../store/kit-undo.ts';
import { useSessionStore } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import { LARGER } from './kind-picture.tsx';
import type { Done, KitAtWork } from './use-kit.ts';

export function useKitAt(at: At): KitAtWork {
  const { say } = usePlanWords();
  const built = useBuildWords(at.challenge, at.record);
  const store = useSessionStore();
  const edit = useEdit();
  const [done, setDone] = useState<Done | null>(null);
  const [undone, setUndone] = useState<string | null>(null);
  const { kinds } = at.challenge.kit;
  const known = useRef(new WeakMap<SolidSpec, Solid>());
  const solids = useMemo(() => solidsOf(kinds, known.current), [kinds]);
  const scale = useMemo(() => LARGER * kitScale(solids.values()), [solids]);
  const told = (issues: readonly FileIssue[]): readonly string[] => [
    ...new Set(issues.map((issue) => built.words.issue({ ...issue, path: [] }))),
  ];
  return {
    ...built,
    at,
    say,
    use: kitUse(at.record, at.challenge),
    solids,
    scale,
    done,
    undone,
    told,
    make: (change, text, gone) => {
      const before = store.getState().record;
      const faults = edit(change);
      const after = store.getState().record;
      if (faults.length > 0 || before === null || after === null || before === after) return told(faults);
      setDone({ text, back: backFrom(before, after), gone: gone ?? null });
      setUndone(null);
      return [];
    },
    undo: () => {
      if (done === null) return;
      if (edit(done.back).length > 0) return;
      setDone(null);
      setUndone(say('kit.undone', { what: done.text }));
    },
  };
}

/** `known`: what was made before. A solid that stays the same object is not drawn anew. */
function solidsOf(kinds: readonly KindOfPiece[], known: WeakMap<SolidSpec, Solid>): ReadonlyMap<string, Solid> {
  const solids = new Map<string, Solid>();
  for (const { id, solid: spec } of kinds) {
    const made = known.get(spec) ?? solidOf(spec);
    if (made === null) continue;
    known.set(spec, made);
    solids.set(id, made);
  }
  return solids;
}

function solidOf(spec: SolidSpec): Solid | null {
  const made = makeSolid(spec);
  return made.ok ? made.value : null;
}
