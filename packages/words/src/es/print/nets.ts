// Spanish texts on pages of nets, and of nets that are not on them.

export const nets = {
  'print.nets': 'Desarrollos',
  'print.sheets': 'Hojas',
  'print.net-once': 'Desarrollos: {kind} (esta página 1 vez)',
  'print.net-copies': 'Desarrollos: {kind} (esta página {copies} veces)',
  'print.net-base': '{kind}: base',
  'print.net-top': '{kind}: tapa',
  'print.net-part': '{kind}\nparte {part} de {parts}',
  'print.net-cut': 'cortar',
  'print.net-fold': 'doblar, lo impreso por dentro',
  'print.net-tab': 'pestaña: pega por su lado en blanco',
  'print.net-letters': 'Pestaña A: pégala en el borde A, lo blanco abajo.',
  'print.net-tape': 'Pestañas pequeñas: usa cinta.',
  'print.net-caution': 'Tijeras: los adultos cortan por los pequeños. Llévalas cerradas, con la punta abajo.',
  'print.gores': 'Bola de papel: {kind}',
  'print.gores-how':
    'Recorta las {count} tiras. Pasa cada una por el borde de una mesa para que se curve a lo largo. Une las tiras lado con lado con cinta: primero por el medio y luego hacia las puntas. Lleva mucho tiempo, y en las uniones la bola queda un poco más gruesa: una bola comprada es más redonda.',
  'print.no-net': '{kind} no tiene desarrollo: el papel plano no se dobla en bola. Usa una comprada.',
  'print.net-too-large':
    '{kind} es demasiado grande para {paper}. Con esta forma, su {size} puede medir {most} como máximo. O deja que se imprima en {parts} partes.',
  'print.face-too-large':
    '{kind} es demasiado grande para {paper}, y dividirlo no ayuda. Con esta forma, su {size} puede medir {most} como máximo.',
} as const;
