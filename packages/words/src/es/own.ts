// Spanish sentences about what a group worked out itself.

import type { OwnTexts } from '../catalogue.ts';

export const own: OwnTexts = {
  'verdict.agrees': '{measure}: resultado propio, {value}. Coincide.',
  'verdict.close': '{measure}: resultado propio, {value}. Está cerca.',
  'verdict.check-the-working': '{measure}: resultado propio, {value}. Revisa el cálculo.',
  'verdict.not-measured': '{measure}: resultado propio, {value}. No hay con qué compararlo.',
  hint: '{sentence} {slip}',
  earns: '{sentence} Gana {points}.',
  expected: '{measure}, calculado con {pi}: {value}.',
  'held-against': '{measure}, {source}: {value}.',
  'slip.diameter-for-radius': 'Sale así con el diámetro en lugar del radio: mira el paso con el radio.',
  'slip.radius-for-diameter': 'Sale así con el radio en lugar del diámetro: mira el paso con el diámetro.',
  'slip.cm-for-mm': 'Sale así al tomar mm por cm, o cm por mm: mira las unidades.',
  'slip.third-forgotten': 'Sale así sin dividir entre 3: mira las pirámides y los conos.',
  'slip.slant-for-height': 'Sale así con la apotema en lugar de la altura: mira el paso con la altura.',
  'slip.other-pi': 'Sale así con otro número para π. La clase toma {pi}.',
  'slip.piece-forgotten': 'Sale así si falta una pieza: cuenta las piezas otra vez.',
  'slip.contact-counted-once':
    'Sale así al dejar un lado de un contacto: donde dos piezas se tocan, los dos lados quedan tapados.',
  'slip.added-for-subtracted': 'Sale así con más en lugar de menos: mira lo que hay que quitar.',
};
