// Changes made from one place of the form: done, or refused with the faults to tell beside that place.

import type { FileIssue } from '@cairnmark/formats';
import { useState } from 'preact/hooks';
import type { Alter } from '../../store/challenge-changes.ts';
import { changeChallenge } from '../../store/challenge-changes.ts';
import type { Change } from '../../store/class-changes.ts';
import { useEdit } from '../../store/edit-class.ts';
import { useForm } from './form.ts';

export interface Making {
  /** Why the last change was refused; [] where it was done. */
  readonly faults: readonly FileIssue[];
  /** Changes the challenge at work; true when it was done. */
  readonly make: (alter: Alter) => boolean;
  /** Changes the class. */
  readonly makeInClass: (change: Change) => boolean;
}

export function useMake(): Making {
  const { challenge } = useForm();
  const edit = useEdit();
  const [faults, setFaults] = useState<readonly FileIssue[]>([]);
  const makeInClass = (change: Change): boolean => {
    const found = edit(change);
    setFaults(found);
    return found.length === 0;
  };
  return { faults, make: (alter) => makeInClass(changeChallenge(challenge.id, alter)), makeInClass };
}
