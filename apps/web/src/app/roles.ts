// Who holds the device, the screens that are theirs, and what they may do. Roles keep a lesson in order; they are no lock.

import type { Role } from '../store/device.ts';

export type TabPath =
  | '/class'
  | '/challenge'
  | '/kit'
  | '/print'
  | '/supply'
  | '/build'
  | '/record'
  | '/score'
  | '/board'
  | '/fair';

/** In the order of the day. */
const TABS: Readonly<Record<Role, readonly [TabPath, ...TabPath[]]>> = {
  teacher: ['/class', '/challenge', '/kit', '/print', '/supply', '/build', '/record', '/score', '/board', '/fair'],
  pupil: ['/build', '/supply', '/score', '/board'],
  measurer: ['/record', '/supply', '/score', '/board'],
  judge: ['/record', '/score', '/board'],
};

/** The first is where they begin. */
export const tabsOf = (role: Role): readonly [TabPath, ...TabPath[]] => TABS[role];

/** The screen is a tab, but of somebody else. */
export const isElsewhere = (role: Role, path: string): boolean =>
  TABS.teacher.some((tab) => tab === path) && !TABS[role].some((tab) => tab === path);

export type Act =
  /** Sets values, gives points by hand, takes either back, says which try counts, freezes the Board. */
  | 'decide'
  /** Gives marks and answers yes/no rules. */
  | 'judge'
  /** Says that the real build was looked at. */
  | 'confirm';

const ACTS: Readonly<Record<Role, readonly Act[]>> = {
  teacher: ['decide', 'judge', 'confirm'],
  measurer: ['confirm'],
  judge: ['judge'],
  pupil: [],
};

export const may = (role: Role, act: Act): boolean => ACTS[role].includes(act);

/** Anybody may hand the device to pupils, and the teacher to anybody. */
export const asksPin = (now: Role, next: Role): boolean => now !== 'teacher' && next !== 'pupil' && next !== now;
