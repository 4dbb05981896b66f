// Who measures, judges or decides. A role will do; no pupil is named.

import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { LineField } from './line-field.tsx';
import type { Person } from './use-person.ts';

export const PersonField = ({ label, person }: { readonly label: string; readonly person: Person }) => (
  <LineField className="person" label={label} value={person.typed} most={NAME_CHARACTERS_MOST} change={person.type} />
);
