// English texts of a solid or a build as a file for other programs.

export const models = {
  'model.save': 'Save as 3D model',
  'model.true-size':
    'In true size: STL counts millimetres, glTF counts metres. When a program asks for the unit, choose that.',
  'model.stl': 'STL, for a 3D printer',
  'model.glb': 'glTF, for a screen',
  'model.refused': 'These pieces do not fit as they are laid. The Build screen says why.',
  'model.help':
    'Makes a file for a 3D printer, or for a program that shows it in space. The nozzle of a printer burns: an adult runs it, by the rules of the school.',
} as const;
