// Who holds the device, and the screens that are theirs. Roles keep a lesson in order; they are no lock.

import type { Role } from '../store/device.ts';

export type TabPath = '/class' | '/challenge' | '/kit' | '/supply' | '/build' | '/record' | '/score' | '/board';

/** In the order of the day. */
const TABS: Readonly<Record<Role, readonly TabPath[]>> = {
  teacher: ['/class', '/challenge', '/kit', '/supply', '/build', '/record', '/score', '/board'],
  pupil: ['/supply', '/build', '/score', '/board'],
  measurer: ['/record', '/score', '/board'],
  judge: ['/record', '/score', '/board'],
};

export const tabsOf = (role: Role): readonly TabPath[] => TABS[role];

export type Act =
  /** Sets values, gives points by hand, takes either back, freezes the Board. */
  | 'decide'
  /** Gives marks and answers yes/no rules. */
  | 'judge'
  /** Says that the real build was looked at, and types what the ruler and the watch showed. */
  | 'measure'
  /** Changes a build, or what the group worked out itself. */
  | 'build';

const ACTS: Readonly<Record<Role, readonly Act[]>> = {
  teacher: ['decide', 'judge', 'measure', 'build'],
  pupil: ['build'],
  measurer: ['measure'],
  judge: ['judge'],
};

export const may = (role: Role, act: Act): boolean => ACTS[role].includes(act);
