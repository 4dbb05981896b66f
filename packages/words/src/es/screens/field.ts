// Textos en español de los campos para longitudes y otros números.

import type { field as pattern } from '../../en/screens/field.ts';

export const field: Readonly<Record<keyof typeof pattern, string>> = {
  'field.decimal-mark': ',',
  'field.unread-length': 'No puedo leer {text} como una longitud.',
  'field.unread-number': 'No puedo leer {text} como un número.',
  'field.unread-whole': 'No puedo leer {text} como un número entero.',
  'field.too-small': '{text} es demasiado pequeño: lo mínimo es {least}.',
  'field.too-large': '{text} es demasiado grande: lo máximo es {most}.',
  'field.empty': 'Escribe un número.',
  'field.kept': 'He dejado {kept}.',
  'field.either': '¿Qué quieres decir con {text}?',
};
