// Spanish texts of the measuring tables and the answer key.

export const measuring = {
  'print.measure-how':
    'Mide el desarrollo antes de doblarlo. Cuenta en el cuerpo doblado. Escribe – donde no hay ninguno.',
  'print.measure-ruler': 'En nuestra regla se leen {ruler}.',
  'print.measure-solid': 'Cuerpo',
  'print.measure-longest-edge': 'arista más larga',
  'print.measure-surface': 'superficie',
  'print.own-how': 'Inventa cuerpos. Dibuja cada uno y ponle un nombre. Después mídelo y cuenta.',
  'print.own-sketch': 'Nombre y dibujo',
  'print.own-sizes': 'Medidas, {unit}',
  'print.key-lengths': 'Las longitudes están como se leen en la regla de la clase.',
  'print.key-pi': 'La superficie y el volumen se calculan con {pi}.',
  'print.key-agrees': 'Un resultado coincide si falla como mucho en lo que está detrás de ±.',
  'print.key-own': 'Un grupo que ha medido sus propias piezas encuentra sus resultados en la Tarjeta de puntos.',
  'print.key-none': '–',
} as const;
