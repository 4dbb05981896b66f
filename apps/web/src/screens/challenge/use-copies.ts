// Copies of the challenge at work: of its rules alone, or with all that was built under them. Either lands in the copy.

import type { Challenge } from '@cairnmark/engine';
import type { FileIssue } from '@cairnmark/formats';
import { addChallenge, addWithBuilds, copyOf } from '../../store/challenge-copies.ts';
import type { Change } from '../../store/class-changes.ts';
import { useSession } from '../../store/use-session.ts';
import { useForm } from './form.ts';
import { useMake } from './use-make.ts';

interface Copies {
  readonly faults: readonly FileIssue[];
  readonly copy: () => void;
  readonly copyWithBuilds: () => void;
}

export function useCopies(arrive: (id: string) => void): Copies {
  const { at, challenge } = useForm();
  const { faults, makeInClass } = useMake();
  const goTo = useSession((session) => session.goTo);
  const land = (add: (copy: Challenge, behind: string) => Change): void => {
    const copy = copyOf(at.record, challenge);
    if (!makeInClass(add(copy, challenge.id))) return;
    goTo({ challenge: copy.id });
    arrive(copy.id);
  };
  return { faults, copy: () => land(addChallenge), copyWithBuilds: () => land(addWithBuilds) };
}
