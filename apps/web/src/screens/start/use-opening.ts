// Opening a class from the first screen, one at a time, and what is said when one does not open.

import type { ClassRecord } from '@cairnmark/engine';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { useScreenWords } from '../../app/use-words.ts';
import type { Role } from '../../store/device.ts';
import { pinOf } from '../../store/pins.ts';
import type { Session } from '../../store/session.ts';
import type { KeptClass } from '../../store/storage.ts';
import { useSession, useSessionStore } from '../../store/use-session.ts';
import { useStorage } from '../../store/use-storage.ts';
import type { Device, Opened } from './open-file.ts';
import { openKept } from './open-file.ts';
import type { Refusal } from './refusal.ts';

export interface Opening {
  readonly kept: readonly KeptClass[];
  /** The class that is open on the page, where the device keeps none of it; null: there is none. */
  readonly unkept: ClassRecord | null;
  readonly refusal: Refusal | null;
  /** `holder`: who has the device from now on; null: who had it before. */
  open(how: (device: Device) => Promise<Opened>, holder: Role | null): void;
  goOn(kept: KeptClass): void;
  /** Back to the class that is open. */
  goBack(): void;
}

export function useOpening(): Opening {
  const words = useScreenWords();
  const storage = useStorage();
  const store = useSessionStore();
  const [, navigate] = useLocation();
  const kept = useKept();
  const record = useSession((session) => session.record);
  const classId = useSession((session) => session.place?.classId);
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const isOpening = useRef(false);
  const goBack = (): void => navigate('/build');
  const open = (how: (device: Device) => Promise<Opened>, holder: Role | null): void => {
    // A double tap would open the demo twice, and keep two of it.
    if (isOpening.current) return;
    isOpening.current = true;
    setRefusal(null);
    const lost = (): Opened => ({
      ok: false,
      refusal: { title: words.say('start.not-opened'), sentences: [words.say('frame.not-here-what')] },
    });
    void how({ kept: kept ?? [], storage, language: words.language })
      .catch(lost)
      .then((opened) => {
        isOpening.current = false;
        if (!opened.ok) return setRefusal(opened.refusal);
        const { begin, resume, handTo } = store.getState();
        if (holder !== null) handTo(holder);
        (opened.isKept ? resume : begin)(opened.classId, opened.record);
        goBack();
      });
  };
  return {
    kept: kept ?? [],
    unkept: kept === null || kept.some(({ id }) => id === classId) ? null : record,
    refusal,
    open,
    goOn: (one) => {
      if (holdsMore(store.getState(), one.id)) goBack();
      else open(() => openKept(one, storage, words.language), pinOf(one.id) === null ? null : 'pupil');
    },
    goBack,
  };
}

/** Whether the page has more of a class than the storage: what found no room there is on the page alone. */
const holdsMore = ({ record, place, saved }: Session, classId: string): boolean =>
  record !== null && place?.classId === classId && saved !== 'kept';

/** null: not asked yet. */
function useKept(): readonly KeptClass[] | null {
  const storage = useStorage();
  const saved = useSession((session) => session.saved);
  const [kept, setKept] = useState<readonly KeptClass[] | null>(null);
  useEffect(() => {
    // Asked again when more has been kept: somebody may be back here before that.
    if (saved === 'saving') return;
    let here = true;
    void storage.list().then((list) => here && setKept(list));
    return () => {
      here = false;
    };
  }, [storage, saved]);
  return kept;
}
