// Textos en español de los campos para longitudes y otros números.

import type { field as pattern } from '../../en/screens/field.ts';

export const field: Readonly<Record<keyof typeof pattern, string>> = {
  'field.decimal-mark': ',',
  'field.unread-length': 'No puedo leer {text} como una longitud. Escríbela así: 12,5 cm o 4 3/4 in.',
  'field.unread-number': 'No puedo leer {text} como un número. Escríbelo así: 12,5.',
  'field.unread-whole': 'No puedo leer {text} como un número entero. Escríbelo así: 12.',
  'field.too-small': '{text} es demasiado pequeño: lo mínimo es {least}.',
  'field.too-large': '{text} es demasiado grande: lo máximo es {most}.',
  'field.empty': 'Escribe un número.',
  'field.kept': 'He dejado {kept}.',
  'field.either': '¿Qué quieres decir con {text}?',
};
