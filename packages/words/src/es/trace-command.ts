// Textos en español de la orden que calca.

import type { traceCommand as pattern } from '../en/trace-command.ts';

export const traceCommand: Readonly<Record<keyof typeof pattern, string>> = {
  'help.trace': `cairnmark trace TOP.jpg [SIDE.jpg] --taps FILE [--as table|json|csv] [--lang en|es]

Mide una construcción con dos fotos sobre la hoja de base: TOP.jpg desde arriba para los sitios, SIDE.jpg
para la altura. FILE dice qué hoja es, qué piezas hay desde la mesa hacia arriba y dónde se tocaron. Es
JSON con estas claves; los píxeles se cuentan desde la esquina superior izquierda de la foto:

  sheet      "ground", "forts" (la de cuatro páginas) o "plain" (en blanco)
  paper      "a4" o "letter"
  focal35Mm  si se conoce: la distancia focal como en película de 35 mm
  pieces     una lista; de cada pieza su kind (un nombre), su solid como en un archivo de kit, resting (el
             lado en que está, como "base") y taps, como [[880.9, 560.8], [810.3, 746.5]]: dos vértices bien
             separados, de la cara de arriba de un prisma o de la base de una pirámide; tres puntos en el
             borde de lo que es redondo
  top        toques en la pieza más alta en la foto de lado: su punta, o los dos extremos de una cara plana

  --taps FILE  ese archivo
  --as json    la construcción y su altura como datos: mm, rad
`,
  'usage.trace-photos': 'Nombra una foto desde arriba y, si la hay, una de lado. Mira: {help}',
  'usage.trace-taps': '¿Qué toques? Pon --taps y un archivo. Mira: {help}',
  'trace.no-json': 'Esto no es JSON. Escríbelo como en la ayuda: {help}',
  'trace.bad': '{place}: Falta, o no es como debe ser. Mira: {help}',
  'trace.no-jpeg': 'No es una foto JPEG. Guárdala así y prueba otra vez.',
  'trace.seen': 'Cuadrados encontrados: {found} de {most}. Inclinación {tilt}.',
  'trace.seen-plain': 'Se ven los bordes de la hoja. Inclinación {tilt}.',
  'trace.head-piece': 'pieza',
  'trace.head-bottom': 'se apoya a',
  'trace.head-x': 'derecha',
  'trace.head-y': 'atrás',
  'trace.head-turn': 'girada',
  'trace.stacked': 'Las piezas suman {height}.',
  'trace.height': 'Según la foto de lado mide {height} de alto, ± {error}.',
};
