// Spanish texts of the ground sheet, by which photographs are measured.

export const ground = {
  'print.ground-title': 'Hoja para fotos',
  'print.ground-how': 'Imprime al 100 %. Construye en el centro y no tapes ninguno de los ocho cuadrados.',
  'print.ground-lay': 'Imprime al 100 %. Junta las cuatro páginas por los bordes y construye donde se unen.',
  'print.ground-from': 'desde esta marca',
  'print.ground-to': 'hasta esta marca: 100 mm',
  'print.ground-place-1': 'arriba a la izquierda',
  'print.ground-place-2': 'arriba a la derecha',
  'print.ground-place-3': 'abajo a la izquierda',
  'print.ground-place-4': 'abajo a la derecha',
} as const;
