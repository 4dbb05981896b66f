// What every part of the form knows: the challenge, whether its rules are locked, and the words of the class.

import type { Challenge } from '@cairnmark/engine';
import type { PlanWords } from '@cairnmark/words';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { At } from '../../store/where-at.ts';

export interface Form extends BuildWords {
  readonly at: At;
  readonly challenge: Challenge;
  /** Groups have built under these rules. */
  readonly locked: boolean;
  readonly say: PlanWords['say'];
}

export const FormContext = createContext<Form | null>(null);

export function useForm(): Form {
  const form = useContext(FormContext);
  if (form === null) throw new RangeError('no challenge above this part');
  return form;
}
