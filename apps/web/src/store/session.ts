// What the app knows while it is open: the class, who is at work in it, and whether all of it is kept. Every change goes
// to the storage at once, so that a closed tab loses nothing.

import type { History } from '@cairnmark/editing';
import { begin, did, redo, undo } from '@cairnmark/editing';
import type { Attempt, Challenge, ClassRecord, Group } from '@cairnmark/engine';
import type { Layout } from '@cairnmark/geometry';
import type { Language } from '@cairnmark/words';
import { createStore } from 'zustand/vanilla';
import { recallBoard, rememberBoard } from './board-memory.ts';
import type { BoardState } from './board-state.ts';
import { NEW_BOARD } from './board-state.ts';
import type { Change } from './class-changes.ts';
import { addAttempt, attemptsOf, changeAttempt, newAttempt, withLayout } from './class-changes.ts';
import { nowWithZone } from './clock.ts';
import type { Place, Units } from './device.ts';
import { languageOf, recall, remember } from './device.ts';
import type { ClassStorage, Kept } from './storage.ts';
import { changesBetween } from './storage.ts';

export interface Session {
  readonly language: Language;
  /** null: as the ruler of the challenge reads. */
  readonly units: Units | null;
  readonly record: ClassRecord | null;
  readonly place: Place | null;
  readonly saved: Kept | 'saving';
  readonly board: BoardState;
  /** Shows a class that is new here, and keeps it; goes to the first challenge of the first group. */
  begin(classId: string, record: ClassRecord): void;
  /** Shows a class as it was kept; goes to where it was left. */
  resume(classId: string, record: ClassRecord): void;
  goTo(place: Partial<Place>): void;
  change(change: Change): void;
  /** Changes the try at work; begins one when there is none. */
  changeTry(change: (attempt: Attempt) => Attempt): void;
  startTry(from?: Attempt): void;
  /** Undo and redo of layouts, by attempt. */
  readonly histories: Readonly<Record<string, History<Layout>>>;
  /** Another layout for the try at work; what was confirmed before has to be seen again. */
  layOut(layout: Layout): void;
  undo(): void;
  redo(): void;
  speak(language: Language): void;
  measureIn(units: Units | null): void;
  /** Changes what the Board shows, on this device. */
  showOnBoard(change: Partial<BoardState>): void;
}

export type SessionStore = ReturnType<typeof createSession>;

/** `preferred`: languages of the browser, the best first. */
export function createSession(storage: ClassStorage, preferred: readonly string[]) {
  const memory = recall();
  let writing: Promise<unknown> = Promise.resolve();
  // What the storage holds. What it once refused is in the next changes again.
  let held: { readonly classId: string; readonly record: ClassRecord } | null = null;
  return createStore<Session>()((set, get) => {
    const write = async (classId: string, record: ClassRecord): Promise<Kept> => {
      const before = held?.classId === classId ? held.record : null;
      const saved = await storage.keep(classId, changesBetween(before, record), nowWithZone());
      if (saved === 'kept') held = { classId, record };
      return saved;
    };
    const keep = (classId: string, record: ClassRecord): void => {
      set({ saved: 'saving' });
      const turn = writing.then(() => write(classId, record));
      writing = turn;
      void turn.then((saved) => {
        if (writing === turn) set({ saved });
      });
    };
    const rememberNow = (): void => {
      const { language, units, place } = get();
      remember({ language, units, place });
    };
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
      language: memory.language ?? languageOf(preferred),
      units: memory.units,
      record: null,
      place: memory.place,
      saved: 'kept',
      board: NEW_BOARD,
      begin: (classId, record) => {
        set({ record, place: firstPlace(classId, record), board: recallBoard(classId) });
        keep(classId, record);
        rememberNow();
      },
      resume: (classId, record) => {
        const { place } = get();
        const left = place?.classId === classId && whereAt(record, place) !== null ? place : null;
        held = { classId, record };
        set({ record, place: left ?? firstPlace(classId, record), board: recallBoard(classId) });
        rememberNow();
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
        keep(place.classId, after);
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
      histories: {},
      layOut: (layout) => {
        if (get().place?.attempt === null) get().startTry();
        step((history) => did(history, layout));
      },
      undo: () => step(undo),
      redo: () => step(redo),
      speak: (language) => {
        set({ language });
        rememberNow();
      },
      measureIn: (units) => {
        set({ units });
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

/** Where the class is at work, as records; null while no class is open, or the place is of another class. */
export interface At {
  readonly record: ClassRecord;
  readonly group: Group;
  readonly challenge: Challenge;
  readonly tries: readonly Attempt[];
  /** null: not begun. */
  readonly attempt: Attempt | null;
}

export function whereAt(record: ClassRecord | null, place: Place | null): At | null {
  const group = record?.groups.find(({ id }) => id === place?.group);
  const challenge = record?.challenges.find(({ id }) => id === place?.challenge);
  if (record === null || group === undefined || challenge === undefined) return null;
  const tries = attemptsOf(record, group.id, challenge.id);
  return { record, group, challenge, tries, attempt: tries.find(({ id }) => id === place?.attempt) ?? null };
}

function firstPlace(classId: string, record: ClassRecord): Place | null {
  const [group] = record.groups;
  const [challenge] = record.challenges;
  if (group === undefined || challenge === undefined) return null;
  const attempt = attemptsOf(record, group.id, challenge.id).at(-1)?.id ?? null;
  return { classId, group: group.id, challenge: challenge.id, attempt };
}
