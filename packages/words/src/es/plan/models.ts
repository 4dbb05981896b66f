// Spanish texts of a solid or a build as a file for other programs.

export const models = {
  'model.save': 'Guardar como modelo 3D',
  'model.true-size':
    'A tamaño real: STL cuenta milímetros y glTF cuenta metros. Si un programa pregunta por la unidad, elige esa.',
  'model.stl': 'STL, para una impresora 3D',
  'model.glb': 'glTF, para verlo en pantalla',
  'model.refused': 'Estas piezas no caben como están puestas. La pantalla Construir dice por qué.',
  'model.help':
    'Hace un archivo para una impresora 3D o para un programa que lo muestra en el espacio. La boquilla de la impresora quema: la maneja un adulto, según las normas de la escuela.',
} as const;
