// What the app knows while it is open: the class, who is at work in it, and whether all of it is kept. Every change goes
// to the storage at once, so that a closed tab loses nothing.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import type { Language } from '@cairnmark/words';
import { createStore } from 'zustand/vanilla';
import { recallBoard, rememberBoard } from './board-memory.ts';
import type { BoardState } from './board-state.ts';
import { NEW_BOARD } from './board-state.ts';
import type { Change } from './class-changes.ts';
import { addAttempt, attemptsOf, changeAttempt, newAttempt } from './class-changes.ts';
import { nowWithZone } from './clock.ts';
import type { Place, Role, Units } from './device.ts';
import { languageOf, recall, remember } from './device.ts';
import { forgetClass } from './forget-class.ts';
import { createKeeper } from './keeper.ts';
import type { LayoutHistory } from './layout-history.ts';
import { layoutHistory } from './layout-history.ts';
import type { ClassStorage, Kept } from './storage.ts';
import { firstPlace, placeIn, whereAt } from './where-at.ts';

export interface Session extends LayoutHistory {
  readonly language: Language;
  /** null: as the ruler of the challenge reads. */
  readonly units: Units | null;
  readonly record: ClassRecord | null;
  readonly place: Place | null;
  readonly saved: Kept | 'saving';
  readonly board: BoardState;
  /** Name of the class that was deleted last, until another one is open; null: none was. */
  readonly erased: string | null;
  /** Who holds the device now. */
  readonly role: Role;
  /** Shows a class that is new here, and keeps it; goes to the first challenge of the first group. */
  begin(classId: string, record: ClassRecord): void;
  /** Shows a class as it was kept; goes to where it was left. */
  resume(classId: string, record: ClassRecord): void;
  /** Deletes everything of the class from this device, and closes it. Unless it is 'kept', it is there as before. */
  erase(): Promise<Kept>;
  goTo(place: Partial<Place>): void;
  change(change: Change): void;
  /** Changes the try at work; begins one when there is none. */
  changeTry(change: (attempt: Attempt) => Attempt): void;
  startTry(from?: Attempt): void;
  speak(language: Language): void;
  measureIn(units: Units | null): void;
  handTo(role: Role): void;
  /** Changes what the Board shows, on this device. */
  showOnBoard(change: Partial<BoardState>): void;
}

export type SessionStore = ReturnType<typeof createSession>;

/** `preferred`: languages of the browser, the best first. */
export function createSession(storage: ClassStorage, preferred: readonly string[]) {
  const memory = recall();
  return createStore<Session>()((set, get) => {
    const keeper = createKeeper(storage, (saved) => set({ saved }));
    const rememberNow = (): void => {
      const { language, units, place, role } = get();
      remember({ language, units, place, role });
    };
    return {
      language: memory.language ?? languageOf(preferred),
      units: memory.units,
      record: null,
      place: memory.place,
      saved: 'kept',
      board: NEW_BOARD,
      erased: null,
      role: memory.role,
      begin: (classId, record) => {
        set({ record, place: firstPlace(classId, record), board: recallBoard(classId), erased: null, histories: {} });
        keeper.keep(classId, record);
        rememberNow();
      },
      resume: (classId, record) => {
        const { place } = get();
        const left = place?.classId === classId ? placeIn(record, place) : null;
        keeper.holds(classId, record);
        // Other classes may have tries of the same names, so no history outlives its class.
        const board = recallBoard(classId);
        set({ record, place: left ?? firstPlace(classId, record), board, erased: null, histories: {} });
        rememberNow();
      },
      erase: async () => {
        const { place, record } = get();
        const outcome = place === null ? 'kept' : await keeper.erase(place.classId);
        if (outcome !== 'kept') return outcome;
        if (place !== null) forgetClass(place.classId);
        set({
          record: null,
          place: null,
          saved: 'kept',
          board: NEW_BOARD,
          erased: record?.name ?? null,
          histories: {},
        });
        rememberNow();
        return outcome;
      },
      goTo: (change) => {
        const { record, place } = get();
        if (record === null || place === null) return;
        const next = { ...place, ...change };
        const moved = next.group !== place.group || next.challenge !== place.challenge;
        const tries = attemptsOf(record, next.group, next.challenge);
        const attempt = moved && change.attempt === undefined ? (tries.at(-1)?.id ?? null) : next.attempt;
        set({ place: { ...next, attempt } });
        rememberNow();
      },
      change: (change) => {
        const { record, place } = get();
        if (record === null || place === null) return;
        const after = change(record);
        set({ record: after });
        keeper.keep(place.classId, after);
      },
      changeTry: (change) => {
        const { place, startTry } = get();
        if (place !== null && place.attempt === null) startTry();
        const attempt = get().place?.attempt;
        if (attempt !== null && attempt !== undefined) get().change(changeAttempt(attempt, change));
      },
      startTry: (from) => {
        const { record, place } = get();
        const at = whereAt(record, place);
        if (record === null || place === null || at === null) return;
        const fresh = newAttempt(record, at.group, at.challenge, nowWithZone());
        const attempt = from === undefined ? fresh : { ...fresh, layout: from.layout };
        get().change(addAttempt(attempt));
        get().goTo({ attempt: attempt.id });
      },
      ...layoutHistory(set, get),
      speak: (language) => {
        set({ language });
        rememberNow();
      },
      measureIn: (units) => {
        set({ units });
        rememberNow();
      },
      handTo: (role) => {
        set({ role });
        rememberNow();
      },
      showOnBoard: (change) => {
        const { board, place } = get();
        const next = { ...board, ...change };
        set({ board: next });
        if (place !== null) rememberBoard(place.classId, next);
      },
    };
  });
}
