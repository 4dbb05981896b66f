// Spanish texts of the table cards.

export const tableCards = {
  'print.card-cut': 'Corta por las líneas de trazos. Una tarjeta para la mesa de cada grupo.',
  'print.card-word': 'Palabra de mesa',
  'print.card-how': 'Apunta con la cámara al cuadrado, o escribe las seis letras.',
} as const;
