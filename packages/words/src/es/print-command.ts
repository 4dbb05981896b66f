// Spanish texts of the command that prints.

import type { printCommand as english } from '../en/print-command.ts';

export const printCommand: Readonly<Record<keyof typeof english, string>> = {
  'help.print': `cairnmark print [ARCHIVO] -o SALIDA.pdf [--what nets|sheets|ground|gores] [--paper a4|letter]
                [--challenge ID] [--lang en|es]

Escribe en un PDF lo que una lección lleva en papel. ARCHIVO es un archivo de clase, de reto o de juego de
piezas; sin archivo trata de la clase de muestra. Si ya hay un SALIDA.pdf, el nuevo ocupa su lugar cuando
está entero; si algo falla, se queda el viejo.

  --what nets      desarrollos de las piezas de papel, a su tamaño (es lo normal); con esto:
    --sets N         tantos desarrollos de cada tipo; 1 si no se dice
    --masters        páginas de un solo tipo, llenas de copias suyas, para fotocopiar
    --split          el desarrollo que no cabe en el papel se divide por los pliegues
    --svg CARPETA    también un dibujo de cada desarrollo (SVG), para máquinas que cortan; entonces -o
                     puede faltar
  --what sheets    las hojas de un reto, una copia de cada una; con esto:
    --sheet ID       solo esta: lesson-plan, materials, measure-young, measure-older, measure-own,
                     answer-key, rules, roles, game, record, record-pieces, rubric, results,
                     riddle, riddle-key, reflection
    --large-print    letra más grande en más páginas, para quien la necesita
    --pupils N       alumnos de la clase, para contar las copias; 5 por grupo si no se dice
  --what ground    la hoja de suelo con la que se miden las fotos; con esto:
    --forts          la de cuatro páginas, para fuertes
  --what gores     tiras para bolas de papel, para el maestro o la maestra
  --paper a4       o letter; sin ella A4, y Carta para una clase que mide en pulgadas
  --challenge ID   de qué reto son las piezas y las reglas, por su nombre o su identificador; el primero de
                   la clase si no se dice
`,
  'usage.out-which': '¿Dónde se escribe? Pon -o y un nombre que acabe en .pdf. Mira: {help}',
  'usage.out-no-pdf': 'El PDF no se puede llamar "{name}". Elige un nombre que acabe en .pdf.',
  'usage.one-file': 'Un solo archivo cada vez, por favor. Mira: {help}',
  'usage.option-elsewhere': 'La opción "{name}" va con --what {what}. Mira: {help}',
  'usage.whole-number': 'La opción "{name}" no puede ser "{value}". Usa un número entero de 1 a {most}.',
  'usage.sheet-unknown': 'No hay ninguna hoja "{name}". Usa una de estas: {known}.',
  'file.no-folder': 'No hay tal carpeta donde escribir. Créala antes, o elige otra.',
  'file.is-folder': 'Esto es una carpeta. Añade un nombre para el archivo.',
  'file.not-writable': 'Aquí no se puede escribir. Elige otro lugar, o mira quién puede escribir.',
  'file.disk-full': 'El disco está lleno. Haz sitio e inténtalo de nuevo.',
  'print.nothing':
    'Este archivo ({format}) no tiene nada que imprimir. Nombra una clase, un reto o un juego de piezas.',
  'print.kit-alone': 'Un juego de piezas no tiene reglas que imprimir. Nombra un archivo de clase o de reto.',
  'print.no-challenge': 'Esta clase no tiene ningún reto, así que no hay nada que imprimir. Añade uno antes.',
  'print.no-paper': 'Ninguna pieza de este juego es de papel y tiene desarrollo, así que no se hizo ninguna página.',
  'print.no-balls': 'En este juego no hay ninguna bola, así que no se hizo ninguna página.',
  'print.written': '{file}: {pages}, {paper}.',
  'print.page': '1 página',
  'print.pages': '{count} páginas',
  'print.replaced': 'Ya había un archivo con ese nombre; este ocupó su lugar.',
  'print.drawn': '{file}: un dibujo del desarrollo.',
  'print.nets': '{nets}: {kinds}.',
  'print.net': '1 desarrollo',
  'print.net-count': '{count} desarrollos',
  'print.kind': '{kind} {count}',
  'print.sheets-of-paper': 'Con las copias que dice cada página, son {count} hojas de papel.',
  'print.left-out': 'No está: {sentence}',
  'print.try-split': 'Añade --split para imprimir en partes lo que no cabe.',
  'print.not-paper': 'Sin desarrollo, porque no son de papel: {kinds}.',
  'print.to-scale': 'Imprime al 100 %, sin ajustar a la página. Después mide las barras en el papel.',
  'print.copies': 'copias: {count}',
};
