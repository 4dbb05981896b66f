// Spanish texts of the terminal.

import type { CommandTexts } from '../catalogue.ts';
import { bestCommand } from './best-command.ts';
import { fairCommand } from './fair-command.ts';
import { printCommand } from './print-command.ts';
import { traceCommand } from './trace-command.ts';

export const commands: CommandTexts = {
  ...fairCommand,
  ...bestCommand,
  ...printCommand,
  ...traceCommand,
  help: `Cairnmark mide, puntúa y ordena construcciones de sólidos apilados.

  cairnmark score [ARCHIVO...]             ordena los grupos de una clase; sin archivo, la clase de muestra
  cairnmark measure [ARCHIVO...]           todos los datos de una construcción, cada uno con su cálculo
  cairnmark why [ARCHIVO...] GRUPO [OTRO]  qué separa a dos grupos, o dos intentos de un grupo
  cairnmark ready [ID] [ARCHIVO...]        retos listos para jugar; con un ID, una clase en ese reto
  cairnmark favour [ARCHIVO]               qué favorecen los puntos, y puntos que favorecen a un cuerpo
  cairnmark even [ARCHIVO]                 los puntos más justos posibles
  cairnmark best [ARCHIVO...]              la mejor construcción que permiten las piezas
  cairnmark print [ARCHIVO] -o SALIDA.pdf  desarrollos y hojas para la lección, en PDF
  cairnmark trace TOP.jpg [SIDE.jpg]       una construcción medida en fotos, con un archivo de toques
  cairnmark solids                         los sólidos, sus medidas y cómo se apoyan
  cairnmark check ARCHIVO...               dice qué falla en un archivo
  cairnmark help [ORDEN]                   este texto, o más sobre una orden

Opciones de todas las órdenes:
  --lang en|es                             idioma de la respuesta

En la carpeta de Cairnmark, escribe npm run cairnmark -- por cairnmark: npm run cairnmark -- measure --lang es

Las listas se cuentan desde 1. La orden acaba con 0 si todo va bien, con 1 si un archivo tiene un fallo
y con 2 si no se entendió la orden.
`,
  'help.cautions': 'Precauciones',
  'help.score': `cairnmark score [ARCHIVO...] [--rows] [--as table|json|csv] [--lang en|es]

Ordena los grupos, reto por reto, y suma el día. ARCHIVO es un archivo de clase; o nombra un archivo de
reto y los archivos de intentos que le corresponden. Sin archivo se puntúa la clase de muestra.

  --rows       muestra también los puntos de cada construcción, fila por fila, los resultados propios de los
               grupos y sus piezas ganadas
  --as table   para personas (es lo normal)
  --as json    todo lo que halló el motor, como datos: mm, mm², mm³
  --as csv     una línea por construcción, para una hoja de cálculo: coma entre celdas, punto en los números;
               una celda vacía es algo sin medir, que no es 0
`,
  'help.measure': `cairnmark measure [ARCHIVO...] [--attempt ID] [--without N|all] [--tilt LADO] [--lang en|es]

Muestra todos los datos de una construcción con sus cálculos, y si se sostiene. ARCHIVO es un archivo de
clase; o nombra un archivo de reto y uno de intento; o ninguno para la clase de muestra. Si hay más de un
intento, di cuál por su identificador; sin él, la orden los lista.

  --attempt ID   la construcción que se muestra
  --without N    dice además qué pasa al quitar la pieza N, contando desde 1 en el orden en que se montó;
                 --without all lo dice de cada pieza
  --tilt LADO    dice además cuánto puede inclinarse la mesa hacia un lado: left (izquierda), right (derecha),
                 front (delante), back (atrás), o grados de 0 a 360 contados desde la derecha, en sentido
                 contrario a las agujas del reloj vistos desde arriba
`,
  'help.why': `cairnmark why [ARCHIVO...] GRUPO [OTRO] [--challenge ID] [--lang en|es]

Con dos grupos: dice línea por línea qué separa sus construcciones, quién va por delante y por cuánto, reto
por reto. Con un grupo: dice qué cambió entre sus dos últimos intentos. Los grupos van por nombre o por
identificador. ARCHIVO es como en score; su nombre acaba en .json. Sin archivo trata de la clase de muestra.

  --challenge ID   solo este reto, por su nombre o su identificador
`,
  'help.ready': `cairnmark ready [ID] [ARCHIVO...] [--pieces N] [--rows] [--lang en|es]

Sin ID: lista los retos listos para jugar, con cualquier juego de piezas. Con un ID: puntúa cada construcción
con dibujo de una clase como si fuera de ese reto; cuenta la mejor de cada grupo. ARCHIVO es como en score;
su nombre acaba en .json. Sin archivo son las construcciones de la clase de muestra.

  --pieces N   el número de piezas que pide el reto, si pide alguno; 5 si no se dice
  --rows       muestra también los puntos de cada construcción, fila por fila
`,
  'help.solids': `cairnmark solids [--lang en|es]

Lista los sólidos que puede tener un juego de piezas: las medidas que pide cada uno, otras medidas que se
aceptan en su lugar, cuántas caras, aristas y vértices tiene, y sobre qué lados puede apoyarse.
`,
  'help.check': `cairnmark check ARCHIVO... [--lang en|es]

Lee cada archivo y dice qué falla, lugar por lugar, o que está bien.
`,
  'usage.command-unknown': 'No hay ninguna orden "{name}". Usa una de estas: {known}.',
  'usage.option-unknown': 'Aquí no hay ninguna opción "{name}". Mira: {help}',
  'usage.option-alone': 'La opción "{name}" necesita un valor detrás. Mira: {help}',
  'usage.option-value': 'La opción "{name}" no puede ser "{value}". Usa una de estas: {known}.',
  'usage.option-no-value': 'La opción "{name}" no lleva valor. Mira: {help}',
  'usage.piece-unknown': 'En esta construcción no hay ninguna pieza "{piece}". Usa un número de 1 a {count}, o all.',
  'usage.side-unknown': 'No hay ningún lado "{side}". Usa left, right, front, back, o grados como 30.',
  'usage.group-unknown': 'No hay ningún grupo "{name}". Usa uno de estos: {known}.',
  'usage.group-which': 'Nombra un grupo o dos. Mira: {help}',
  'usage.challenge-unknown': 'No hay ningún reto "{name}". Usa uno de estos: {known}.',
  'usage.ready-unknown': 'No hay ningún reto listo "{name}". Usa uno de estos: {known}.',
  'usage.pieces-unknown': 'El número de piezas no puede ser "{pieces}". Usa un número entero desde 1, como 5.',
  'usage.no-file': '¿Qué archivo? Mira: {help}',
  'usage.no-files-here': 'Esta orden no lee ningún archivo. Mira: {help}',
  'file.line': '{file}: {sentence}',
  'file.missing': 'No existe ese archivo. Revisa el nombre.',
  'file.folder': 'Esto es una carpeta. Nombra un archivo que esté dentro.',
  'file.closed': 'Este archivo no se puede abrir. Revisa quién puede leerlo.',
  'file.too-large':
    'Este archivo es demasiado grande. Se leen {most} MB como máximo. Divídelo en archivos más pequeños.',
  'file.not-utf8': 'Esto no es un texto en UTF-8. Elige otro archivo o guárdalo otra vez como UTF-8.',
  'file.empty': 'Este archivo está vacío. Elige otro archivo.',
  'file.fine': '{file}: está bien ({format}).',
  'file.beyond-the-kit': '{file}: la construcción {attempt} se quedará sin puesto. {sentence}',
  'files.nothing-to-score':
    'Este archivo ({format}) solo no se puede puntuar. Nombra un archivo de clase, o uno de reto con sus intentos.',
  'files.no-challenge': 'Junto a estos intentos falta el reto. Nombra también su archivo.',
  'files.two-challenges': 'Este es un segundo reto. Nombra un solo archivo de reto.',
  'files.two-classes': 'Esta es una segunda clase. Nombra un solo archivo de clase.',
  'files.class-and-others': 'Un archivo de clase lo tiene todo. Nómbralo solo.',
  'files.no-attempt': 'En estos archivos no hay ningún intento. Añade un archivo de intento.',
  'files.attempt-unknown': 'No hay ningún intento "{id}". Usa uno de estos:\n{known}',
  'files.attempt-which': 'Hay varios intentos. Di cuál con --attempt y su identificador:\n{known}',
  'score.invented': 'Todos los datos de esta clase son inventados.',
  'score.order': 'Orden: {order}.',
  'score.not-ranked': 'Sin puesto',
  'score.decisions': 'Decidido por personas',
  'score.rows': 'Puntos, fila por fila',
  'score.own': 'Resultados propios de los grupos',
  'score.supply': 'Piezas ganadas',
  'score.warnings': 'Mira esto antes de fiarte de los puestos',
  'score.day': 'Todo el día',
  'score.total': 'Total: {total}',
  'score.none': 'sin medir',
  'score.best-of': 'el mejor de {count} intentos',
  'score.last-of': 'el último de {count} intentos',
  'score.chosen-of': 'elegido entre {count} intentos',
  'score.another-counts': 'Cuenta otro intento del grupo.',
  'score.no-result': 'sin resultado',
  'score.not-played': 'sin jugar todavía',
  'score.not-known': 'no se sabe',
  'score.points-not-known': 'puntos sin saber: sin medir {measures}',
  'working.letters': `Letras: A área vista desde arriba, V volumen, S todas las superficies, U superficie que se puede tocar, B base, L los lados sin las bases, P perímetro (de un sólido: de su base), l largo,
w ancho, h altura, k un número dividido entre otro, s apotema, a y b aristas, r radio (en una pirámide: del centro de la base a su lado),
R radio de la base bajo una parte de arriba menor, d cuánto entra la parte de arriba, q la mitad de P, n cuántos,
t 180° / n.`,
  'working.count-letters': 'Al contar: N piezas, F caras, R las curvas, E aristas, C vértices.',
  'working.digits':
    'Los cálculos siguen con los números completos. Con las cifras que se ven, la última puede variar un poco.',
  'measure.title': '{group}, {challenge} ({attempt})',
  'measure.own': 'Resultados propios del grupo',
  'measure.supply': 'Piezas ganadas por el grupo',
  'measure.hidden': 'No se muestra a esta clase: {measures}.',
  'measure.rules': 'Reglas',
  'measure.stock': 'Más de lo que tiene el juego',
  'measure.source': '{value} ({source})',
  'measure.base': 'Sobre la mesa quiere decir: {base}.',
  'measure.counting': 'Cómo se cuenta: {counting}.',
  'measure.touching': 'Dos superficies a menos de {contact} cuentan como si se tocaran.',
  'measure.gap-allowance': 'Desde arriba, los huecos de hasta {gap} cuentan como cerrados.',
  'measure.no-gaps': 'No se cerró ningún hueco.',
  'measure.stands': '¿Se sostiene?',
  'measure.stands-limits': 'En qué se basa esta respuesta',
  'measure.not-judged': 'Sin valorar: no hay dibujo de esta construcción.',
  'measure.no-drawing':
    'No hay dibujo de esta construcción: no se puede quitar ninguna pieza ni inclinar nada. Quita --without y --tilt.',
  'measure.without': 'Quitando una pieza',
  'measure.tilt': 'Con la mesa inclinada hacia un lado',
  'why.title': '{first} y {second}',
  'why.tries': 'Qué cambió: {group}',
  'why.try': 'intento {number}',
  'why.changes': 'Qué cambió',
  'why.points': 'Qué separa los dos intentos',
  'why.nothing-in-common': '{first} y {second} no tienen ningún reto con construcción de los dos.',
  'why.one-try':
    'No hay ningún reto con dos intentos o más de {group}. Para ver qué lo separa de otro grupo, nombra también ese grupo.',
  'ready.title': '{name}: {id}',
  'ready.grades': 'Para {grades}.',
  'ready.labels': 'Estándares: {labels}.',
  'ready.rules': 'Reglas: {rules}.',
  'ready.points': 'Puntos: {rows}.',
  'ready.no-kit': 'Esta clase no tiene ningún reto, así que no hay juego de piezas.',
  'ready.left-out.one': 'No entra 1 construcción: no tiene dibujo, o tiene otro juego de piezas.',
  'ready.left-out': 'No entran {count} construcciones: no tienen dibujo, o tienen otro juego de piezas.',
  'solids.sizes': 'Medidas: {sizes}.',
  'solids.or': '{size} o bien {other}',
  'solids.whole': '{size}, un número entero',
  'solids.example': 'Con {sizes}:',
  'solids.counts': '{counts}.',
  'solids.rests': 'Se apoya en:',
  'solids.resting': '{name}: {contact}, {height} de alto',
  'column.place': 'Puesto',
  'column.group': 'Grupo',
  'column.notes': 'Notas',
  'column.challenge': 'Reto',
  'column.attempt': 'Intento',
  'column.why': 'Por qué no tiene puesto',
  'column.total': 'Total',
  'column.results': 'Resultados',
  'column.stands': '¿Se sostiene?',
  'column.own': 'Puntos por resultados propios',
};
