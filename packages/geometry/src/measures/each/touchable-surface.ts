// Surface you can touch: the surface of all pieces, less both sides of every contact face to face, less the faces that
// lie on the table. mm2. Touching at lines and points takes nothing away.

import { minus, num, step, sym, times } from '../../kernel/formula.ts';
import type { FaceContact, Stack } from '../../stack/types.ts';
import type { MeasureContext } from '../context.ts';
import type { Finding, MeasureDefinition } from '../measure.ts';
import { sumOverPieces } from '../tally.ts';
import type { Working } from '../types.ts';
import { surfaceShare } from './paper.ts';

export const touchableSurface: MeasureDefinition = {
  id: 'touchable-surface',
  unit: 'mm2',
  measure: ({ stack, tally }: MeasureContext): Finding => {
    if (!stack.shown) return { found: false, reason: stack.reason };
    if (!tally.shown) return { found: false, reason: tally.reason };
    const surface = sumOverPieces(tally.value, 'S', 'mm2', 'surface-less-contacts', surfaceShare);
    const inputs = {
      S: { value: surface.value, unit: 'mm2' },
      C: { value: areaOf(betweenPieces(stack.value)), unit: 'mm2' },
      T: { value: areaOf(onTable(stack.value)), unit: 'mm2' },
    } as const;
    const line = step('U', minus(minus(sym('S'), times(num(2), sym('C'))), sym('T')), inputs, 'mm2');
    // How S comes about stands with the paper already: it is the same sum.
    const working: Working = { method: 'surface-less-contacts', steps: [line], parts: [] };
    return { found: true, value: line.result.value, working };
  },
};

const betweenPieces = (stack: Stack): readonly FaceContact[] =>
  stack.faceContacts.filter((contact) => contact.second !== 'table');

const onTable = (stack: Stack): readonly FaceContact[] =>
  stack.faceContacts.filter((contact) => contact.second === 'table');

const areaOf = (contacts: readonly FaceContact[]): number =>
  contacts.reduce((total, contact) => total + contact.areaMm2, 0);
