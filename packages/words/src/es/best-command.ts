// Spanish texts of the command that works out the best possible build.

import type { bestCommand as pattern } from '../en/best-command.ts';

export const bestCommand: Readonly<Record<keyof typeof pattern, string>> = {
  'help.best': `cairnmark best [ARCHIVO...] [--challenge ID] [--as table|json] [--lang en|es]

Calcula la mejor construcción que permiten las piezas de cada reto, según lo que da los puestos y según sus
reglas: qué altura, sobre qué base, cuántos puntos, qué inclinación. Dice si alguna construcción podría
tener más, o solo qué torres se han mirado. ARCHIVO es como en score. Sin archivo se trata de la clase de
muestra. Es para el profesorado: desvela la torre.

  --challenge ID   solo este reto, por su nombre o identificador
  --as json        todo lo que se calculó, como datos: mm, mm², la tangente de una inclinación
`,
};
