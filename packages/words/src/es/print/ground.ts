// Spanish texts of the ground sheet, by which photographs are measured.

export const ground = {
  'print.ground-one-page': 'Hoja para fotos de torres',
  'print.ground-four-pages': 'Hoja para fotos de fuertes',
  'print.ground-how': 'Imprime al 100 %. Construye en el centro y no tapes ninguno de los ocho cuadrados.',
  'print.ground-lay': 'Imprime al 100 %. Une con cinta las cuatro páginas, borde con borde.',
  'print.ground-cover': 'Construye donde se unen. Tapa solo los cuadrados que quedan debajo de la construcción.',
  'print.ground-from': 'desde esta marca',
  'print.ground-to': 'hasta esta marca: 100 mm',
  'print.ground-place-1': 'arriba a la izquierda',
  'print.ground-place-2': 'arriba a la derecha',
  'print.ground-place-3': 'abajo a la izquierda',
  'print.ground-place-4': 'abajo a la derecha',
} as const;
