// Spanish texts of the best possible build.

import type { best as pattern } from '../../en/talk/best.ts';

export const best: Readonly<Record<keyof typeof pattern, string>> = {
  'best.tallest': 'La construcción más alta que puede haber: {value}.',
  'best.narrow': 'La construcción más alta que puede haber: {value}. Se apoya en una base de {base}.',
  'best.width': 'La mayor altura para el ancho de su base: {value}.',
  'best.points': 'Los puntos que se pueden ganar como mucho: {value}.',
  'best.points-for': 'Los puntos que se pueden ganar como mucho por {measures}: {value}.',
  'best.tower-tallest': 'La torre más alta: {value}.',
  'best.tower-narrow': 'La torre más alta: {value}. Se apoya en una base de {base}.',
  'best.tower-points': 'Los puntos que se pueden ganar como mucho con una torre: {value}.',
  'best.tower-points-for': 'Los puntos que se pueden ganar como mucho con una torre por {measures}: {value}.',
  'best.tilt': 'La torre más firme se sostiene hasta que la mesa se inclina {value}.',
  'best.any': 'Ninguna construcción con estas piezas que cumpla las reglas puede tener más.',
  'best.centred':
    'Es la mejor de todas las torres que tienen cada pieza en el centro de la de abajo. Otra construcción puede tener más.',
  'best.centred-to':
    'Es la mejor de todas las torres que tienen cada pieza en el centro de la de abajo. Otra construcción puede tener más, pero ninguna tiene más de {most}.',
  'best.from-table': 'Desde la mesa hacia arriba: {pieces}.',
  'best.beside': 'A su lado: {pieces}.',
  'best.piece': '{kind} sobre {side}',
  'best.times': '{count} × {piece}',
  'best.stands-to': 'Se sostiene hasta que la mesa se inclina {tilt}.',
  'best.close': 'Es tan poco que en una mesa de verdad puede caer.',
  'best.cut': 'La búsqueda paró antes de terminar, de tantas construcciones que hay. Nada de esto se llama la mejor.',
  'best.cut-so-far': 'La mejor torre que se ha encontrado hasta ahora tiene {value}.',
  'best.cut-most': 'Ninguna torre con cada pieza en el centro tiene más de {most}.',
  'best.too-few-pieces': 'Las reglas piden {needed} o más. Solo hay {pieces}.',
  'best.too-few-carriers':
    'Las reglas piden {needed} o más. Ninguna torre puede tener más de {most}: las otras piezas no sostienen nada.',
  'best.base-too-small':
    'Ninguna torre se sostiene sobre una base tan pequeña. La más pequeña que necesita una pieza es de {base}.',
  'best.too-steep':
    'Ninguna torre con tantas piezas se sostiene con esa inclinación. La más firme, de {pieces}, se sostiene hasta {tilt}.',
  'best.rules-clash': 'Ninguna torre cumple todas estas reglas.',
  'best.no-goal': 'Aquí no se calcula la mejor construcción: los puestos van según {measure}.',
  'best.no-rows': 'Aquí no se calcula la mejor construcción: no hay puntos por la altura, la base o las piezas mismas.',
  'best.rules-left': 'Esto no se ha tenido en cuenta: {rules}.',
  'best.rows-left': 'Los puntos por esto no están incluidos: {measures}.',
  'best.rules-kept': 'Esto se cumple, y lo que vale no está incluido en los puntos: {rules}.',
  'best.whose': 'Calculado con todas las piezas enteras de la clase.',
  'best.front': '¿Qué altura sobre qué base, con cada pieza en el centro de la de abajo?',
  'best.front-base': 'Base de como mucho',
  'best.front-height': 'Altura máxima',
  'best.find': 'Calcularla',
  'best.again': 'Calcularla otra vez',
  'best.working': 'Probando torres: {count} piezas puestas hasta ahora.',
  'best.stop': 'Parar',
  'best.stopped': 'Parado. No se ha calculado nada.',
  'best.failed': 'La búsqueda se ha interrumpido. Vuelve a cargar esta página.',
  'best.teacher-only': 'El alumnado nunca ve esta construcción.',
  'best.show': 'Decir a los grupos cuánto se acercan',
  'best.show-what':
    'Cuando un grupo tiene su primer resultado, su tarjeta de puntos dice qué parte de lo mejor posible ha alcanzado. Se calcula con las piezas que el grupo ha ganado, con las medidas que él mismo tomó.',
  'best.percent': 'Esta construcción llega al {percent} % de la mejor torre que se puede hacer con las piezas.',
  'best.percent-about':
    'Esta construcción llega por lo menos al {percent} % de la mejor torre que se puede hacer con las piezas.',
  'best.percent-points':
    'Por {measures}, esta construcción gana el {percent} % de los puntos que se pueden ganar como mucho con las piezas.',
  'best.percent-points-about':
    'Por {measures}, esta construcción gana por lo menos el {percent} % de los puntos que se pueden ganar como mucho con las piezas.',
  'best.percent-over': '¡Es mejor que cualquier torre que tenga cada pieza en el centro de la de abajo!',
  'best.percent-working': '¿Cuánto se acerca a lo mejor posible? Calculando …',
};
