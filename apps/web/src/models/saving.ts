// All that saving a 3D model takes, as one script: it comes when somebody saves one.

export { coloured } from './coloured.ts';
export { placedPieces } from './placed-pieces.ts';
export { writeModel } from './write-model.ts';
