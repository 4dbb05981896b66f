// Spanish sentences for everything that keeps a sheet from being printed.

import type { PrintIssueTexts } from '../../print.ts';

export const printIssues: PrintIssueTexts = {
  'character-unprintable':
    'El signo "{character}" de "{text}" no se puede imprimir. Escríbelo con letras del español o del inglés.',
  'text-too-wide': '"{text}" necesita {neededMm} y solo tiene {roomMm}. Escríbelo más corto.',
  'text-too-high': '"{text}" necesita una altura de {neededMm} y solo tiene {roomMm}. Escríbelo más corto.',
  'part-too-wide': 'Una parte de la hoja mide {neededMm} de ancho y solo caben {roomMm}. Hazla más pequeña.',
  'part-too-high': 'Una parte de la hoja mide {neededMm} de alto y en una página caben {roomMm}. Divídela.',
  'outline-too-large':
    '"{id}" no cabe en una página: hay sitio para {widthMm} por {heightMm}. Hazlo más pequeño o divídelo.',
  'pages-too-many': 'La hoja necesita {count} páginas y se permiten {most} como máximo. Quita algo.',
  'no-supply-game':
    'Aquí las piezas no se ganan en un juego. Elige un juego en la pantalla Reto e imprime después su hoja.',
  'no-table-cards': 'Ningún grupo tiene todavía una palabra de mesa. Llegan cuando se comparte la clase.',
  'no-marks':
    'Aquí no se valora nada y ninguna regla es de sí o no. Añade algo en la pantalla Reto e imprime después su hoja.',
};
