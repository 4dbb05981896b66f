// Spanish texts at the foot of every printed sheet.

export const frame = {
  'print.page': 'Página {page} de {pages}',
  'print.bar-mm': '100 mm',
  'print.bar-inch': '2 pulgadas',
  'print.scale': 'Imprime al 100 % y mide estas barras.',
} as const;
