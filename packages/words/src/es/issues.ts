// Spanish sentences for everything that can be wrong with a file, a kit, a challenge or a layout.

import type { IssueTexts } from '../keys.ts';

export const issues: IssueTexts = {
  'not-json':
    'El archivo no se puede leer desde la línea {line}, columna {column} (no es JSON). Mira ahí y justo antes: ¿falta o sobra una coma, unas comillas o un corchete? Los decimales van con punto, y las comillas son rectas.',
  'duplicate-key': 'Esta clave está aquí dos veces. Deja solo una.',
  'too-deep': 'Hay listas dentro de listas a más de {most} niveles. Exporta el archivo otra vez.',
  'too-many-values': 'El archivo tiene más de {most} valores. Expórtalo otra vez o divídelo.',
  'file-too-large':
    'El archivo tiene {characters} caracteres. Se leen {most} como máximo. Divídelo en archivos más pequeños.',
  'not-a-cairnmark-file':
    'No es un archivo de Cairnmark: faltan "format" y "version" al principio. Elige otro archivo.',
  'format-unknown': 'No se conoce el formato "{format}". Usa uno de estos: {allowed}.',
  'format-other': 'Este archivo tiene el formato "{received}", pero hace falta "{expected}". Elige otro archivo.',
  'version-newer':
    'Este archivo lo escribió un Cairnmark más nuevo: versión {version}; aquí la más nueva es la {newest}. Ábrelo allí o pide una copia más antigua.',
  'version-unknown': 'Esto no es un número de versión. Escribe un número entero desde 1.',
  'more-issues': 'Y {count} más. Arregla primero los de arriba y comprueba otra vez.',
  'code-too-large': 'Este intento necesita {bytes} bytes y en un código caben {most}. Guárdalo como archivo.',
  'code-of-others': 'Este código no es de Cairnmark. Haz una foto del código de un intento.',
  'code-newer':
    'Este código lo hizo un Cairnmark más nuevo: versión {version}; aquí la más nueva es la {newest}. Trae el intento como archivo o usa aquí el más nuevo.',
  'code-misread': 'Una parte de este código no se leyó como está. Haz la foto otra vez: más cerca, de frente y nítida.',
  'code-not-ours': 'Este código no dice lo que escribiría Cairnmark. Pide el intento otra vez, como archivo.',
  missing: 'Falta este dato. Escríbelo.',
  'unknown-key': 'Esta clave no se conoce aquí. Revisa cómo está escrita o quítala.',
  'wrong-type': 'Aquí hay {received}. Escribe {expected}.',
  'not-one-of': 'Aquí pone "{received}". Usa uno de estos: {allowed}.',
  'not-finite': 'Con este número no se puede calcular. Escribe un número normal.',
  'not-whole': 'Debe ser un número entero. Quita los decimales.',
  'too-small': 'Este número es demasiado pequeño. Escribe {least} o más.',
  'not-above': 'Este número es demasiado pequeño. Escribe más de {moreThan}.',
  'too-large': 'Este número es demasiado grande. Escribe {most} o menos.',
  'too-few': 'Esta lista es demasiado corta. Necesita al menos {least}.',
  'too-many': 'Esta lista es demasiado larga. Caben {most} como máximo.',
  'too-many-keys': 'Aquí hay demasiadas claves. Caben {most} como máximo.',
  empty: 'Este texto está vacío. Escribe algo.',
  'too-long': 'Este texto es demasiado largo. Caben {most} caracteres como máximo.',
  'not-an-id': 'Esto no es un identificador. Usa minúsculas, cifras y guiones sueltos, como tall-light-2.',
  'not-a-time': 'Esto no es una fecha con hora. Escríbela así: 2026-03-05T10:20:00+01:00.',
  'control-character': 'Este texto tiene un signo que no se ve. Escribe el texto de nuevo.',
  'size-missing': 'Falta esta medida. Mídela y escríbela en mm.',
  'size-unknown': 'Este sólido no tiene una medida con ese nombre. Revisa cómo está escrita o quítala.',
  'size-not-positive': 'Una medida debe ser mayor que 0 mm. Aquí es {sizeMm}. Mide otra vez.',
  'size-not-finite': 'Con esta medida no se puede calcular. Mide otra vez.',
  'size-too-large': 'Esta medida es demasiado grande: {sizeMm}. El máximo es {mostMm}. ¿Está en mm?',
  'size-too-small': 'Esta medida es demasiado pequeña: {sizeMm}. El mínimo es {leastMm}. ¿Está en mm?',
  'size-given-twice': 'Esta medida ya está dada por "{first}". Deja solo una.',
  'sides-not-whole': 'El número de lados es {sides}. Debe ser un número entero.',
  'sides-out-of-range': 'El número de lados es {sides}. Debe ir de {fewest} a {most}.',
  'triangle-impossible':
    'Estos tres lados no forman un triángulo: el más largo debe ser menor que los otros dos juntos. Mide otra vez.',
  'slant-too-short':
    'La altura inclinada es {slantMm}. Debe ser mayor que {runMm}, o los lados no se juntan. Mide otra vez.',
  'frustum-upside-down': 'La parte de arriba debe ser menor que la de abajo. Cámbialas, o usa un prisma o un cilindro.',
  'kind-unknown': 'El juego de piezas no tiene el tipo "{kind}". Usa un tipo del juego o añádelo.',
  'resting-unknown': 'Una pieza del tipo "{kind}" no puede apoyarse en "{resting}". Usa uno de estos: {known}.',
  'position-not-finite': 'Con esta posición no se puede calcular: {value}. Coloca la pieza otra vez.',
  'position-too-far': 'La pieza está a {valueMm}. El máximo es {limitMm}. Ponla más cerca.',
  overlaps: 'Esta pieza se mete {depthMm} en la pieza {other}. Apártala o ponla encima.',
  'mass-not-positive': 'Una masa debe ser mayor que 0 g. Aquí es {massG}. Pesa la pieza otra vez.',
  'centre-outside-piece':
    'El centro del peso está a {centreMm} de altura, pero debe quedar dentro de la pieza: de {leastMm} a {mostMm}. Mide otra vez.',
  'too-many-pieces': 'La construcción tiene {count} piezas. El máximo es {limit}. Divídela.',
  'id-twice': 'El identificador "{id}" está aquí dos veces. Cambia uno de los dos.',
  'group-unknown': 'No hay ningún grupo "{group}". Revisa cómo está escrito o añade el grupo.',
  'challenge-unknown': 'No hay ningún reto "{challenge}". Revisa cómo está escrito o añade el reto.',
  'criterion-unknown': 'El reto no tiene el criterio "{criterion}". Revisa cómo está escrito o añádelo.',
  'requirement-unknown': 'El reto no tiene la regla "{requirement}". Revisa cómo está escrita o añádela.',
  'measure-unknown': 'No hay ninguna medida "{measure}". Revisa cómo está escrita.',
  'height-source-missing': 'Aquí no cuenta ninguna altura. Nombra al menos una: ruler, photo, model.',
  'number-out-of-range': 'El número {value} no vale aquí. Escribe un número de {least} a {most}.',
  'cap-below-floor': 'El máximo de puntos ({cap}) es menor que el mínimo ({floor}). Cámbialos.',
  'surface-unknown':
    'Ninguna pieza del juego tiene la superficie "{surface}", y la mesa se llama table. Revisa cómo está escrita.',
  'friction-twice': 'La fricción de "{first}" sobre "{second}" está aquí dos veces. Deja solo una.',
  'supply-not-played':
    'En el reto "{challenge}" no se ganan piezas en un juego. Pon las reglas del juego o quita esta lista.',
  'supply-missing':
    'Esto pregunta por lo ganado, pero aquí no se ganan piezas en un juego. Pon las reglas del juego o quítalo.',
  'kinds-missing': 'Esta regla no nombra ningún tipo que se pueda usar. Nombra al menos uno o quita la regla.',
  'own-twice': 'El resultado "{measure}" está aquí dos veces. Deja solo uno.',
  'stock-exceeded': 'Esto reparte {count} de "{piece}"; quedan por repartir: {left}. Revisa el número.',
  'more-than-the-group-has': 'Esto quita {count} de "{piece}", pero el grupo solo tiene {has}. Revisa el número.',
  'mark-twice': '{judge} ha valorado "{criterion}" dos veces. Deja solo una nota.',
};
