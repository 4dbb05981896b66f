// Spanish cautions.

import type { CautionTexts } from '../keys.ts';

export const cautions: CautionTexts = {
  'stands-or-falls':
    'Si se sostiene o se cae solo vale para piezas ligeras de papel, espuma o madera sobre una mesa. No es un cálculo de ingeniería de nada donde una persona pueda subirse, meterse o ponerse debajo, tampoco de nieve o hielo.',
  cutting: 'Tijeras y cúteres: los adultos cortan para los pequeños. Se llevan cerrados y con la punta hacia abajo.',
  'hot-glue': 'La cola caliente es solo para adultos.',
  'tall-towers':
    'Torres más altas que los ojos: apártate al probarlas. No te subas nunca a una silla ni a una construcción.',
  running: 'Juegos de correr en clase: deja libre el suelo. No corras con tijeras.',
  photos: 'En las fotos solo hay piezas, ninguna cara de persona.',
  'school-rules': 'Las reglas de tu escuela van primero.',
};
