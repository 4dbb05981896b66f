// Spanish texts of the riddle sheet and of its answers.

export const riddles = {
  'print.riddle-how':
    'Una regla secreta da puntos a cada pieza. Toma las piezas y cuenta. ¿Qué regla da justo estos puntos?',
  'print.riddle-number': 'Adivinanza {number}',
  'print.riddle-one': 'Cuenta una sola cosa: de 1 a 5 puntos por cada una.',
  'print.riddle-one+c': 'Cuenta una sola cosa: de 1 a 5 puntos por cada una, y de 0 a 3 puntos por la pieza misma.',
  'print.riddle-two': 'Cuentan una o dos cosas: de 1 a 3 puntos por cada una.',
  'print.riddle-minus': 'Cuenta una cosa: de 1 a 3 puntos por cada una. Otra puede quitar 1 punto por cada una.',
  'print.riddle-things': 'Lo que puede contar: {things}.',
  'print.riddle-points': 'puntos',
  'print.riddle-check': 'Prueba tu regla con la última pieza. Después pregunta si es la buena.',
  'print.riddle-rule': 'Nuestra regla',
  'print.riddle-each': '{points} por cada {thing}',
  'print.riddle-itself': '{points} por la pieza misma',
  'print.riddle-answer': 'La regla: {rule}.',
  'print.riddle-last': 'La última pieza, {solid}: {points}.',
  'print.riddle-own':
    'Para una regla propia de este tipo, da los puntos de estas piezas: {solids}. Distinguen todas las reglas.',
  'print.riddle-alike': 'No tomes ninguna de estas: con estas piezas, {one} da lo mismo que {other}.',
  'print.riddle-none': 'Con estas piezas no se distingue ninguna regla de este tipo; no hay adivinanza.',
} as const;
