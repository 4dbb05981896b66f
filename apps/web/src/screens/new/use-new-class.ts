// The form of a new class while it is filled in, what is missing, and the class that comes of it.

import type { GradePreset, ReadyId } from '@cairnmark/engine';
import { READY_IDS } from '@cairnmark/engine';
import type { Words } from '@cairnmark/words';
import { useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { usePlanWords } from '../../app/plan-words.ts';
import { freshId } from '../../store/fresh-id.ts';
import type { ReadNames } from '../../store/group-names.ts';
import { readNames } from '../../store/group-names.ts';
import { asName } from '../../store/plain-text.ts';
import { useSession } from '../../store/use-session.ts';
import { madeClass } from './made-class.ts';
import { namesIn } from './names.ts';

interface Filled {
  readonly name: string;
  readonly groups: string;
  readonly grade: GradePreset;
  readonly units: 'cm' | 'in';
  readonly kit: 'ready' | 'own';
  readonly challenges: ReadonlySet<ReadyId>;
}

export interface NewClassForm {
  readonly filled: Filled;
  readonly read: ReadNames;
  /** What is missing, once somebody asked for the class. */
  readonly missing: { readonly groups: boolean; readonly challenges: boolean };
  fill(change: Partial<Filled>): void;
  toggle(challenge: ReadyId): void;
  make(): void;
}

export function useNewClass(words: Words): NewClassForm {
  const plan = usePlanWords();
  const [, navigate] = useLocation();
  const begin = useSession((session) => session.begin);
  const handTo = useSession((session) => session.handTo);
  const units = useSession((session) => session.units);
  const [filled, setFilled] = useState<Filled>(() => ({ ...EMPTY, units: units ?? 'cm' }));
  const [asked, setAsked] = useState(false);
  const read = readNames(filled.groups, []);
  const missing = { groups: read.names.length === 0, challenges: filled.challenges.size === 0 };
  return {
    filled,
    read,
    missing: { groups: asked && missing.groups, challenges: asked && missing.challenges },
    fill: (change) => setFilled((before) => ({ ...before, ...change })),
    toggle: (id) => setFilled((before) => ({ ...before, challenges: toggled(before.challenges, id) })),
    make: () => {
      setAsked(true);
      if (missing.groups || missing.challenges) return;
      const chosen = {
        ...filled,
        name: asName(filled.name) || plan.say('class.unnamed'),
        groups: read.names,
        challenges: READY_IDS.filter((id) => filled.challenges.has(id)),
      };
      handTo('teacher');
      begin(freshId(), madeClass(chosen, namesIn(plan, words)));
      navigate('/class');
    },
  };
}

const EMPTY: Omit<Filled, 'units'> = {
  name: '',
  groups: '',
  grade: 'grades-4-5',
  kit: 'ready',
  challenges: new Set<ReadyId>(['tallest']),
};

function toggled<T>(set: ReadonlySet<T>, item: T): ReadonlySet<T> {
  const others = new Set(set);
  if (!others.delete(item)) others.add(item);
  return others;
}
